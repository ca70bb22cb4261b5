import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { AskedAtField } from "../autosave/asked-at-field";
import { FieldMessages, RemarksBelow, remarksId } from "./field-messages";

interface FieldChoice {
  readonly value: string;
  readonly label: string;
}

interface ChoiceFieldProps {
  readonly report: FilledReport;
  readonly field: string;
  readonly legend: string;
  readonly choices: readonly FieldChoice[];
  /** Preselected; it is saved once the tester types anything in the form. */
  readonly prefilled?: string;
  /** That it is not answered moves nothing below it. */
  readonly keepsSpace?: boolean;
}

/** A choice between a few values. */
export function ChoiceField({ report, field, legend, choices, prefilled, keepsSpace = false }: ChoiceFieldProps) {
  const { faults, remarks } = fieldNotes(report, field);
  const chosen = textOf(report, field) ?? prefilled;
  return (
    <fieldset
      id={field}
      className="min-w-0"
      aria-describedby={`${field}-messages${keepsSpace ? ` ${remarksId(field)}` : ""}`}
    >
      <legend className="mb-1 font-semibold wrap-anywhere">{legend}</legend>
      <div className="flex flex-wrap gap-2">
        {choices.map(({ value, label }) => (
          <label key={value} className="choice">
            <input
              type="radio"
              name={field}
              value={value}
              defaultChecked={chosen === value}
              {...(prefilled === undefined ? {} : { "data-prefilled": true })}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
      <FieldMessages field={field} faults={faults} remarks={keepsSpace ? [] : remarks} />
      {keepsSpace ? <RemarksBelow isTall report={report} fields={[field]} /> : null}
      <AskedAtField field={field} />
    </fieldset>
  );
}
