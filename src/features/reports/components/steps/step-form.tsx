import type { ReactNode } from "react";
import { Notice } from "@/ui/notice";
import { storedFields, type FilledReport } from "../../filled-report";
import { KeptForm } from "../keeping/kept-form";

interface StepFormProps {
  readonly report: FilledReport;
  /** Beginnings of the names of the fields in it: `swatch`, `reading.bust`. */
  readonly fields: readonly string[];
  readonly children: ReactNode;
}

/** The form of a step: it keeps itself while the report can be filled, and is there to be read after. */
export function StepForm({ report, fields, children }: StepFormProps) {
  if (report.ended !== null)
    return (
      <>
        {report.ended === "stopped" ? (
          <Notice title="You have told that you had to stop">What you typed stays here to be read.</Notice>
        ) : null}
        <fieldset disabled>{children}</fieldset>
      </>
    );
  return (
    <KeptForm testerId={report.testerId} stored={storedFields(report, fields)}>
      {children}
    </KeptForm>
  );
}
