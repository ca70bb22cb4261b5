import { sayingsAt, textOf, type FilledReport } from "../../filled-report";
import { FieldSays } from "./field-says";

export interface FieldChoice {
  readonly value: string;
  readonly label: string;
}

interface ChoiceFieldProps {
  readonly report: FilledReport;
  readonly field: string;
  readonly legend: string;
  readonly choices: readonly FieldChoice[];
  /** Chosen until she chooses; it is hers once she types anything in the form. */
  readonly filledAhead?: string;
}

/** One of a few words. */
export function ChoiceField({ report, field, legend, choices, filledAhead }: ChoiceFieldProps) {
  const { faults, remarks } = sayingsAt(report, field);
  const chosen = textOf(report, field) ?? filledAhead;
  return (
    <fieldset id={field} className="min-w-0" aria-describedby={`${field}-says`}>
      <legend className="mb-1 font-semibold wrap-anywhere">{legend}</legend>
      <div className="flex flex-wrap gap-2">
        {choices.map(({ value, label }) => (
          <label
            key={value}
            className="flex min-h-11 items-center gap-2.5 rounded-md border border-line-strong bg-white px-3 py-1.5 has-checked:border-ink has-checked:bg-band has-checked:font-semibold has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-thread"
          >
            <input
              type="radio"
              name={field}
              value={value}
              defaultChecked={chosen === value}
              {...(filledAhead === undefined ? {} : { "data-filled-ahead": true })}
              className="size-4 shrink-0 accent-thread outline-none"
            />
            <span className="min-w-0 wrap-anywhere">{label}</span>
          </label>
        ))}
      </div>
      <FieldSays field={field} faults={faults} remarks={remarks} />
    </fieldset>
  );
}
