import type { ReactNode } from "react";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { NumberQuestionBox } from "../../asked/number-question-box";
import { FieldQuestion, isAskedAt, isKeptAt, KeptAnswer } from "./field-question";
import { ReportControl, type FieldLooks } from "./report-control";

interface ReportFieldProps extends FieldLooks {
  readonly report: FilledReport;
  /** The field's name in the report. */
  readonly field: string;
  /** The initial text; it is saved once the tester types anything in the form. */
  readonly prefilled?: string;
}

/** A number field of the report, with its messages and questions. */
export function ReportField({ report, field, prefilled, ...looks }: ReportFieldProps) {
  const { hasQuestion = true, foldsQuestion = false } = looks;
  const { faults, remarks } = fieldNotes(report, field);
  const text = textOf(report, field) ?? prefilled ?? "";
  return (
    <ReportControl
      field={field}
      {...looks}
      {...(text === "" ? {} : { text })}
      {...(prefilled === undefined ? {} : { isPrefilled: true })}
      {...(faults.length > 0 ? { faults } : {})}
      {...(remarks.length > 0 && hasQuestion ? { remarks } : {})}
      {...(hasQuestion ? questionsAt({ report, field, foldsQuestion }) : {})}
    />
  );
}

/** What is asked at a field; nothing of it is sent where nothing is asked. */
function questionsAt({
  report,
  field,
  foldsQuestion,
}: {
  report: FilledReport;
  field: string;
  foldsQuestion: boolean;
}) {
  const shown: { question?: ReactNode; kept?: ReactNode; designersQuestion?: ReactNode } = {};
  if (isAskedAt(report, field))
    shown.question = <FieldQuestion report={report} field={field} isFolded={foldsQuestion} />;
  if (isKeptAt(report, field)) shown.kept = <KeptAnswer report={report} field={field} />;
  if (report.asked.some((asked) => asked.field === field))
    shown.designersQuestion = <NumberQuestionBox report={report} field={field} />;
  return shown;
}
