import type { ReactNode } from "react";
import type { ReportPart } from "@/features/calls/report-schema";
import { EmptyState } from "@/ui/empty-state";
import { momentWords } from "@/ui/moment-copy";
import { Section } from "@/ui/section";
import { ReportView } from "../report/send/report-view";
import { SwatchOutlookView } from "../report/steps/swatch-outlook-view";
import { swatchTries } from "../report/steps/swatch-tries";
import type { ReceivedReport } from "./sent-report-data";

interface ReceivedReportSectionProps {
  readonly received: ReceivedReport | null;
  readonly timeZone: string;
  /** What stands under a number, by where it is stored. */
  readonly under?: UnderNumber;
}

/** A number of a stored report; its name is for people who hear the page. */
type StoredNumber = { readonly name: string } & (
  { readonly part: ReportPart; readonly position: number } | { readonly count: string }
);

export type UnderNumber = (item: StoredNumber) => ReactNode;

/** A tester's newest report as it came, and what the swatch in it would do to their size. */
export function ReceivedReportSection({ received, timeZone, under }: ReceivedReportSectionProps) {
  if (received === null)
    return (
      <Section title="Their report">
        <EmptyState title="Nothing sent yet">
          <p>Their swatch appears here as soon as they send it, before they make the garment.</p>
        </EmptyState>
      </Section>
    );
  const { report, version, sentAt, positions } = received;
  const outcomes = swatchTries(report, undefined).flatMap(({ key, outcome }) =>
    outcome === null || outcome.outlook === null ? [] : [{ key, outcome }],
  );
  const sentOn = momentWords(sentAt, { timeZone, edge: "time" });
  return (
    <>
      <Section title="Their report" intro={`Version ${version}, sent on ${sentOn}; as they typed it, in their unit.`}>
        {outcomes.length === 0 ? (
          <p>It holds no swatch yet, or one about which a question is open.</p>
        ) : (
          <>
            <h3>What they read about their swatch</h3>
            {outcomes.map(({ key, outcome }) => (
              <SwatchOutlookView key={key} outcome={outcome} context={report.context} />
            ))}
          </>
        )}
      </Section>
      <ReportView
        report={report}
        reader="designer"
        under={(part, index, { label, typed, count }) => {
          const name = `${label}, ${typed}`;
          if (part === "counts") return count === undefined ? null : under?.({ count, name });
          const position = positions[part][index];
          return position == null ? null : under?.({ part, position, name });
        }}
      />
    </>
  );
}
