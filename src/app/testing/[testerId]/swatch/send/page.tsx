import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { filledReport } from "@/features/testing/report/filled-report";
import { SendSwatch } from "@/features/testing/report/send/send-swatch";

export const metadata: Metadata = { title: "Send your swatch" };

export default async function SendSwatchPage({ params }: PageProps<"/testing/[testerId]/swatch/send">) {
  const { testerId } = await params;
  const loaded = await loadTester(testerId);
  const { inHand, tester } = loaded;
  return (
    <TesterFrame
      loaded={loaded}
      step="swatch"
      title="Send your swatch"
      intro="The designer sees your gauge before you make the garment. Whatever else you have entered so far is sent too."
    >
      <SendSwatch
        report={filledReport(testerId, inHand)}
        inHand={inHand}
        designer={tester.call.designerName}
        pageKey={randomUUID()}
      />
    </TesterFrame>
  );
}
