import type { Metadata } from "next";
import { SizeChanges } from "@/features/patterns/compare/size-changes";
import { isSentUnchanged } from "@/features/testing/report/changed-fields";
import { ReportSent } from "@/features/testing/report/send/report-sent";
import { SendStep } from "@/features/testing/report/send/send-step";
import { filledReport } from "@/features/testing/report/filled-report";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { newerRevision } from "@/features/testing/news/news-data";
import { momentWords } from "@/ui/moment-copy";

export const metadata: Metadata = { title: "Review and send" };

export default async function ReportPage({ params }: PageProps<"/testing/[testerId]/report">) {
  const { testerId } = await params;
  const loaded = await loadTester(testerId);
  const { inHand, tester } = loaded;
  const { sent } = inHand;
  const report = filledReport(testerId, inHand);
  const sentOn = sent === null ? "" : momentWords(sent.sentAt, { timeZone: tester.timeZone, edge: "time" });
  if (sent !== null && isSentUnchanged(inHand)) {
    const { revision, size, unit } = tester;
    const newer = await newerRevision(loaded.access, revision.number);
    return (
      <TesterFrame loaded={loaded} step="report" title="Your report is sent">
        <ReportSent
          {...{ tester, report, sentOn, newer }}
          version={sent.version}
          changes={
            newer === null ? null : (
              <SizeChanges before={revision.document} after={newer.document} size={size.id} unit={unit} />
            )
          }
          now={new Date()}
        />
      </TesterFrame>
    );
  }
  return (
    <TesterFrame
      loaded={loaded}
      step="report"
      title="Review and send"
      intro="Check your whole report: what you typed, and how it is read."
    >
      <SendStep report={report} inHand={inHand} sentOn={sentOn} />
    </TesterFrame>
  );
}
