import { fieldOf, parseField } from "@/engine/reporting";
import { textOf, type FilledReport } from "../filled-report";
import { suggestedFixes } from "./suggested-fixes";
import { AlsoButton } from "./also-button";
import { TickBox } from "./tick-box";

interface FieldProps {
  readonly report: FilledReport;
  readonly field: string;
}

interface FieldQuestionProps extends FieldProps {
  /** One line, which opens its answers. */
  readonly isFolded?: boolean;
}

/** Whether the tester answered a question about a field with yes, and there is none now. */
export function isKeptAt(report: FilledReport, field: string): boolean {
  const keptField = answerField(field);
  return keptField !== null && textOf(report, keptField) === "yes" && !isAskedAt(report, field);
}

/** Whether there is a question about a field. */
export function isAskedAt({ questions }: FilledReport, field: string): boolean {
  return questions.some((asked) => asked.field === field);
}

/** A question about a field that the tester answered with yes, which they can take back. */
export function KeptAnswer({ report, field }: FieldProps) {
  const keptField = answerField(field);
  if (keptField === null || !isKeptAt(report, field)) return null;
  return (
    <div data-kept>
      <TickBox report={report} field={keptField} label="You confirmed that this is correct." />
    </div>
  );
}

/** A question about a field, and how to answer it: a fix by one tap, or a confirmation. */
export function FieldQuestion({ report, field, isFolded = false }: FieldQuestionProps) {
  const question = report.questions.find((asked) => asked.field === field);
  if (question === undefined) return null;
  const message = (
    <>
      <span aria-hidden="true" className="font-semibold">
        ?{" "}
      </span>
      {question.message}
    </>
  );
  const answers = (
    <div className="mt-2 flex flex-wrap items-center gap-x-4 gap-y-1">
      {suggestedFixes(question, report).map(({ label, changes }) => (
        <AlsoButton key={label} changes={changes}>
          {label}
        </AlsoButton>
      ))}
      {question.keptField === null ? null : (
        <TickBox report={report} field={question.keptField} label="Yes, that’s correct" />
      )}
    </div>
  );
  if (isFolded)
    return (
      <div role="status" className="mt-1 rounded-md border-l-4 border-ink bg-band px-3 pb-px">
        <details className="folded-question">
          <summary>
            <span className="min-w-0 flex-1 wrap-anywhere">{message}</span>
            <span className="text-link shrink-0">Answer</span>
          </summary>
          {answers}
        </details>
      </div>
    );
  return (
    <div role="status" className="mt-2 rounded-md border-l-4 border-ink bg-band px-4 py-3">
      <p className="wrap-anywhere">{message}</p>
      {answers}
    </div>
  );
}

/** The field that would hold the answer to a question about this one; shown at the first field of its item. */
function answerField(name: string): string | null {
  const field = parseField(name);
  if (field?.kind === "reading") return fieldOf.reading(field.id, field.key, "kept");
  if (field?.kind === "worked" && field.part === "value") return fieldOf.workedKept(field.id);
  if (field?.kind === "swatch" && field.part === "stitches") return fieldOf.swatch(field.key, "kept");
  if (field?.kind === "yarn" && field.part === "before") return fieldOf.yarn(field.key, "kept");
  return null;
}
