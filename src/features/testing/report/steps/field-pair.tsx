import type { ReactNode } from "react";
import type { FilledReport } from "../filled-report";
import { NumberQuestionBox } from "../../asked/number-question-box";
import { RemarksBelow } from "./remarks-below";
import { FieldQuestion, KeptAnswer } from "./field-question";
import { QuestionSpace } from "./question-space";

interface FieldPairProps {
  readonly report: FilledReport;
  /** Their names. */
  readonly names: readonly string[];
  /** Room for a remark in two lines on a phone. */
  readonly isTall?: boolean;
  readonly children: ReactNode;
}

/** Two fields beside each other, where there is room; what is missing stands below both. */
export function FieldPair({ report, names, isTall, children }: FieldPairProps) {
  return (
    <div>
      <div className="field-pair">{children}</div>
      <RemarksBelow report={report} fields={names} isTall={isTall} />
    </div>
  );
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
      <QuestionSpace
        size="tall"
        space={
          <>
            {fields.map((field) => (
              <KeptAnswer key={field} report={report} field={field} />
            ))}
            <div className="text-soft">{children}</div>
          </>
        }
      >
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
