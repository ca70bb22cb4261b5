import { ButtonLink } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { SwatchOutlookView } from "../steps/swatch-outlook-view";
import { swatchTries } from "../steps/swatch-tries";
import { isSentUnchanged } from "../changed-fields";
import type { ReportInHand } from "../data";
import type { FilledReport } from "../filled-report";
import { swatchLines } from "./report-summary";
import { sendSwatchForm } from "./send-actions";
import { SendForm } from "./send-form";
import { SummaryLines } from "./summary-lines";
import { SWATCH_PLANS } from "./swatch-plan";

interface SendSwatchProps {
  readonly report: FilledReport;
  readonly inHand: Pick<ReportInHand, "sent" | "changed" | "version">;
  readonly designer: string;
  /** Makes what is sent from this page count once. */
  readonly pageKey: string;
}

/** A tester's swatch before they make the garment: what it would do to their size, and what they do next. */
export function SendSwatch({ report, inHand, designer, pageKey }: SendSwatchProps) {
  const home = `/testing/${report.testerId}`;
  const tries = swatchTries(report, undefined);
  if (isSentUnchanged(inHand)) return <Sent home={home} designer={designer} />;
  if (tries.every(({ outcome }) => outcome === null))
    return (
      <Notice title="Your swatch is not complete yet">
        <ButtonLink href={`${home}/swatch`} look="quiet">
          Back to your swatch
        </ButtonLink>
      </Notice>
    );
  return (
    <>
      <SummaryLines lines={swatchLines(report)} nothing="" />
      {tries.map(({ key, outcome }) =>
        outcome?.counts ? <SwatchOutlookView key={key} outcome={outcome} context={report.context} /> : null,
      )}
      {report.ended === null ? (
        <div className="mt-6 border-t border-line-strong pt-6">
          <SendForm testerId={report.testerId} version={inHand.version} label="Send my swatch" action={sendSwatchForm}>
            <input type="hidden" name="key" value={pageKey} />
            <PlanChoice />
          </SendForm>
        </div>
      ) : null}
    </>
  );
}

function PlanChoice() {
  return (
    <fieldset className="mb-5">
      <legend className="mb-2 font-semibold">What will you do now?</legend>
      {Object.entries(SWATCH_PLANS).map(([plan, { label }]) => (
        <label key={plan} className="flex min-h-11 items-center gap-3">
          <input type="radio" name="plan" value={plan} required className="size-5 shrink-0 accent-thread" />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}

function Sent({ home, designer }: { readonly home: string; readonly designer: string }) {
  return (
    <>
      <Notice tone="done" title="Your swatch is sent. Thank you.">
        <bdi>{designer}</bdi> sees what your gauge would do to your size, and what you do next.
      </Notice>
      <div className="flex flex-wrap gap-3">
        <ButtonLink href={`${home}/pattern`}>Open the pattern</ButtonLink>
        <ButtonLink href={home} look="quiet">
          Back to your test
        </ButtonLink>
      </div>
    </>
  );
}
