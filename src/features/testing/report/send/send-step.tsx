import type { ReportInHand } from "../data";
import { fieldWords } from "../field-copy";
import type { FilledReport } from "../filled-report";
import { OpenPoints } from "./open-points";
import { ReportView } from "./report-view";
import { sendReportForm } from "./send-actions";
import { SendForm } from "./send-form";

interface SendStepProps {
  readonly report: FilledReport;
  readonly inHand: ReportInHand;
  /** When the newest version was sent, in words. */
  readonly sentOn: string;
}

/** The whole report before it is sent, or before its changes are, and the button that sends it. */
export function SendStep({ report, inHand, sentOn }: SendStepProps) {
  const { sent, changed, version } = inHand;
  return (
    <>
      {sent === null ? null : <SentLine report={report} version={sent.version} sentOn={sentOn} changed={changed} />}
      {report.ended === null ? <OpenPoints report={report} /> : null}
      <ReportView report={report} reader="tester" />
      {report.ended === null ? (
        <div className="border-t border-line-strong pt-6">
          <p className="mb-4 text-soft">
            {sent === null
              ? "You can send early, even with the swatch alone, and send again whenever you add something. Every version is stored."
              : "This is sent as the next version; the earlier one is stored too."}
          </p>
          <SendForm
            testerId={report.testerId}
            version={version}
            action={sendReportForm}
            label={sent === null ? "Send report" : "Send changes"}
          />
        </div>
      ) : null}
    </>
  );
}

interface SentLineProps {
  readonly report: FilledReport;
  readonly version: number;
  readonly sentOn: string;
  readonly changed: readonly string[];
}

function SentLine({ report, version, sentOn, changed }: SentLineProps) {
  const fields = changed.length === 1 ? "1 field" : `${changed.length} fields`;
  return (
    <div className="mb-8">
      <p className="font-semibold">
        ✓ Sent on {sentOn}, version {version}. Changed since then: {fields}.
      </p>
      <details>
        <summary className="text-link inline-flex min-h-11 items-center">What you changed</summary>
        <ul className="list-disc pl-6">
          {changed.map((field) => (
            <li key={field} className="wrap-anywhere">
              {fieldWords(field, report.context, report.typed)}
            </li>
          ))}
        </ul>
      </details>
    </div>
  );
}
