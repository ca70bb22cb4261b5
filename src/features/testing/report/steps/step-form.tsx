import type { ReactNode } from "react";
import { Notice } from "@/ui/notice";
import { AnswerForms } from "../../asked/answer-forms";
import { isIn, storedFields, type FilledReport } from "../filled-report";
import { AutosaveForm } from "../autosave/autosave-form";
import { NextBar, type NextPage } from "../autosave/step-bar";

/** What every step gets. */
export interface StepProps {
  readonly report: FilledReport;
  readonly next: NextPage | null;
}

interface StepFormProps extends StepProps {
  /** Prefixes of the names of its fields: `swatch`, `reading.bust`. */
  readonly fields: readonly string[];
  readonly children: ReactNode;
}

/** The form of a step: it saves itself while the report can be changed, and is read-only afterwards. */
export function StepForm({ report, fields, next, children }: StepFormProps) {
  if (report.ended !== null)
    return (
      <>
        {report.ended === "closed" ? null : (
          <Notice title={report.ended === "stopped" ? "You have stopped this test" : "The designer ended your test"}>
            You can still read what you typed.
          </Notice>
        )}
        <fieldset disabled>{children}</fieldset>
        <NextBar next={next} />
      </>
    );
  const waiting = report.asked.filter(({ field, answeredAt }) => answeredAt === null && isIn(field, fields));
  return (
    <AnswerForms testerId={report.testerId} questionIds={waiting.map(({ questionId }) => questionId)}>
      <AutosaveForm testerId={report.testerId} stored={storedFields(report, fields)} next={next}>
        {children}
      </AutosaveForm>
    </AnswerForms>
  );
}
