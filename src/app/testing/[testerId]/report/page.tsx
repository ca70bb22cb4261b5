import type { Metadata } from "next";
import { SendStep } from "@/features/testing/report/send/send-step";
import { filledReport } from "@/features/testing/report/filled-report";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { momentWords } from "@/ui/moment-copy";

export const metadata: Metadata = { title: "Review and send" };

export default async function ReportPage({ params }: PageProps<"/testing/[testerId]/report">) {
  const { testerId } = await params;
  const loaded = await loadTester(testerId);
  const { inHand, tester } = loaded;
  return (
    <TesterFrame
      loaded={loaded}
      step="report"
      title="Review and send"
      intro="Check your whole report: what you typed, and how it is read."
    >
      <SendStep
        report={filledReport(testerId, inHand)}
        inHand={inHand}
        sentOn={inHand.sent ? momentWords(inHand.sent.sentAt, { timeZone: tester.timeZone, edge: "time" }) : ""}
      />
    </TesterFrame>
  );
}
