import type { ReactNode } from "react";
import type { FilledReport } from "../filled-report";
import { NumberQuestionBox } from "../../asked/number-question-box";
import { FieldQuestion } from "./field-question";

interface FieldPairProps {
  readonly report: FilledReport;
  /** The fields that stand beside each other. */
  readonly fields: readonly string[];
  readonly children: ReactNode;
}

/** Two fields beside each other, where there is room. A question stands below both, so that neither moves. */
export function FieldPair({ report, fields, children }: FieldPairProps) {
  return (
    <div>
      <div className="field-pair">{children}</div>
      {fields.map((field) => (
        <FieldQuestion key={field} report={report} field={field} />
      ))}
      {fields.map((field) => (
        <NumberQuestionBox key={field} report={report} field={field} />
      ))}
    </div>
  );
}
