import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { AskedAtField } from "../autosave/asked-at-field";
import { FieldMessages } from "./field-messages";

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
}

/** A choice between a few values. */
export function ChoiceField({ report, field, legend, choices, prefilled }: ChoiceFieldProps) {
  const { faults, remarks } = fieldNotes(report, field);
  const chosen = textOf(report, field) ?? prefilled;
  return (
    <fieldset id={field} className="min-w-0" aria-describedby={`${field}-messages`}>
      <legend className="mb-1 font-semibold wrap-anywhere">{legend}</legend>
      <div className="flex flex-wrap gap-2">
        {choices.map(({ value, label }) => (
          <label
            key={value}
            className="flex min-h-11 items-center gap-2.5 rounded-md border border-line-strong bg-white px-2.5 py-1.5 has-checked:border-ink has-checked:bg-band has-checked:font-semibold has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-thread"
          >
            <input
              type="radio"
              name={field}
              value={value}
              defaultChecked={chosen === value}
              {...(prefilled === undefined ? {} : { "data-prefilled": true })}
              className="size-4 shrink-0 accent-thread outline-none"
            />
            <span className="min-w-0 wrap-anywhere">{label}</span>
          </label>
        ))}
      </div>
      <FieldMessages field={field} faults={faults} remarks={remarks} />
      <AskedAtField field={field} />
    </fieldset>
  );
}
