import type { ReactNode } from "react";
import { AskedAtField } from "../autosave/asked-at-field";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { NumberQuestionBox } from "../../asked/number-question-box";
import { FieldQuestion, KeptAnswer } from "./field-question";
import { FieldMessages, remarksId } from "./field-messages";
import { QuestionSpace } from "./question-space";

interface ReportFieldProps {
  readonly report: FilledReport;
  /** The field's name in the report. */
  readonly field: string;
  readonly label: ReactNode;
  /** Shown after the input: `cm`, `stitches`. */
  readonly unit?: string;
  readonly hint?: ReactNode;
  readonly placeholder?: string;
  /** The initial text; it is saved once the tester types anything in the form. */
  readonly prefilled?: string;
  /** `text` for fractions, which number keyboards cannot type. */
  readonly keyboard?: "decimal" | "text";
  /** In the line of the input, after its unit. */
  readonly beside?: ReactNode;
  /** Below the input, for what its keyboard lacks. */
  readonly keys?: ReactNode;
  /** Fills the space in which a question appears. */
  readonly space?: ReactNode;
  /** A question is one line in the place of the hint, and opens its answers: for long lists, where room for each would be lost. */
  readonly foldsQuestion?: boolean;
  /** False where the question, and what is missing, stand elsewhere. */
  readonly hasQuestion?: boolean;
}

/** A number field of the report, with its messages and questions. */
export function ReportField(props: ReportFieldProps) {
  const { report, field, label, unit, hint, placeholder, prefilled, keyboard = "decimal" } = props;
  const { beside, keys, space, foldsQuestion = false, hasQuestion = true } = props;
  const { faults, remarks } = fieldNotes(report, field);
  const notes = (
    <>
      <FieldMessages field={field} faults={faults} remarks={hasQuestion ? remarks : []} />
      {hasQuestion ? <FieldQuestion report={report} field={field} isFolded={foldsQuestion} /> : null}
      <AskedAtField field={field} />
    </>
  );
  const hintLine = hint ? (
    <div id={`${field}-hint`} className="mb-1.5 text-sm text-soft">
      {hint}
    </div>
  ) : null;
  const inSpace = foldsQuestion ? hintLine : space;
  const kept = hasQuestion ? <KeptAnswer report={report} field={field} /> : null;
  return (
    <div className="min-w-0">
      <label htmlFor={field} className="mb-1 block font-semibold wrap-anywhere">
        {label}
      </label>
      {foldsQuestion ? null : hintLine}
      <div className="flex flex-wrap items-center gap-2">
        <input
          id={field}
          name={field}
          defaultValue={textOf(report, field) ?? prefilled ?? ""}
          {...(prefilled === undefined ? {} : { "data-prefilled": true })}
          placeholder={placeholder}
          inputMode={keyboard}
          autoCapitalize="none"
          maxLength={200}
          aria-invalid={faults.length > 0}
          aria-describedby={`${hint ? `${field}-hint ` : ""}${field}-unit ${field}-messages${hasQuestion ? "" : ` ${remarksId(field)}`}`}
          className="control numbers min-h-11 min-w-12 flex-1"
        />
        <span id={`${field}-unit`} className={unit ? "shrink-0 text-soft" : "hidden"}>
          {unit}
        </span>
        {beside}
      </div>
      {keys}
      {inSpace === undefined ? (
        <>
          {notes}
          {kept}
        </>
      ) : (
        <QuestionSpace
          size={foldsQuestion ? "line" : "usual"}
          space={
            <>
              {kept}
              {inSpace}
            </>
          }
        >
          {notes}
        </QuestionSpace>
      )}
      {hasQuestion ? <NumberQuestionBox report={report} field={field} /> : null}
    </div>
  );
}
