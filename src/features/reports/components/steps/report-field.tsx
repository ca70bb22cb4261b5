import type { ReactNode } from "react";
import { CONTROL } from "@/ui/field";
import { sayingsAt, textOf, type FilledReport } from "../../filled-report";
import { FieldQuestion } from "./field-question";
import { FieldSays } from "./field-says";

interface ReportFieldProps {
  readonly report: FilledReport;
  /** The field's name in the report. */
  readonly field: string;
  readonly label: ReactNode;
  /** Stands behind the text: `cm`, `stitches`. */
  readonly unit?: string;
  readonly hint?: ReactNode;
  readonly placeholder?: string;
  /** Stands there until she types; it is hers once she types anything in the form. */
  readonly filledAhead?: string;
  /** `text` where fractions are written, for which no number keyboard has a sign. */
  readonly keyboard?: "decimal" | "text";
}

/** A field of the report for a number, with what is to be said of it. */
export function ReportField(props: ReportFieldProps) {
  const { report, field, label, unit, hint, placeholder, filledAhead, keyboard = "decimal" } = props;
  const { faults, remarks } = sayingsAt(report, field);
  const question = report.questions.find((asked) => asked.field === field);
  return (
    // On a phone a question needs the whole width, also where two fields share a line.
    <div className={`min-w-0 ${question === undefined ? "" : "max-sm:col-span-full"}`}>
      <label htmlFor={field} className="mb-1 block font-semibold wrap-anywhere">
        {label}
      </label>
      {hint ? (
        <div id={`${field}-hint`} className="mb-1.5 text-sm text-soft">
          {hint}
        </div>
      ) : null}
      <div className="flex items-center gap-2">
        <input
          id={field}
          name={field}
          defaultValue={textOf(report, field) ?? filledAhead ?? ""}
          {...(filledAhead === undefined ? {} : { "data-filled-ahead": true })}
          placeholder={placeholder}
          inputMode={keyboard}
          autoCapitalize="none"
          maxLength={200}
          aria-invalid={faults.length > 0}
          aria-describedby={`${hint ? `${field}-hint ` : ""}${field}-unit ${field}-says`}
          className={`${CONTROL} numbers min-h-11 min-w-0 flex-1`}
        />
        <span id={`${field}-unit`} className={unit ? "shrink-0 text-soft" : "hidden"}>
          {unit}
        </span>
      </div>
      <FieldSays field={field} faults={faults} remarks={remarks} />
      <FieldQuestion report={report} field={field} question={question} />
    </div>
  );
}
