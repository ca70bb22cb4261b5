import type { ReactNode } from "react";
import type { FilledReport } from "../filled-report";
import { NumberQuestionBox } from "../../asked/number-question-box";
import { FieldQuestion } from "./field-question";
import { QuestionSpace } from "./question-space";

/** Two fields beside each other, where there is room. */
export function FieldPair({ children }: { readonly children: ReactNode }) {
  return <div className="field-pair">{children}</div>;
}

interface SharedQuestionProps {
  readonly report: FilledReport;
  /** The fields above it, of which one is asked about at a time. */
  readonly fields: readonly string[];
  /** How to answer them, in the space in which a question appears. */
  readonly children: ReactNode;
}

/** A question about any of the fields above, in a space of its own, so that nothing below moves. */
export function SharedQuestion({ report, fields, children }: SharedQuestionProps) {
  return (
    <div>
      <QuestionSpace isTall space={<div className="text-soft">{children}</div>}>
        {fields.map((field) => (
          <FieldQuestion key={field} report={report} field={field} />
        ))}
      </QuestionSpace>
      {fields.map((field) => (
        <NumberQuestionBox key={field} report={report} field={field} />
      ))}
    </div>
  );
}
