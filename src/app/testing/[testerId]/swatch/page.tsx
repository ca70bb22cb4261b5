import type { Metadata } from "next";
import { isSentUnchanged } from "@/features/testing/report/changed-fields";
import { SwatchStep } from "@/features/testing/report/steps/swatch-step";
import { filledReport } from "@/features/testing/report/filled-report";
import { itemKey } from "@/features/testing/report/steps/item-key";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { nextPage } from "@/features/testing/home/tester-steps";

export const metadata: Metadata = { title: "Swatch" };

export default async function SwatchPage({ params, searchParams }: PageProps<"/testing/[testerId]/swatch">) {
  const [{ testerId }, { add }] = await Promise.all([params, searchParams]);
  const loaded = await loadTester(testerId);
  return (
    <TesterFrame
      loaded={loaded}
      step="swatch"
      title="Your swatch"
      intro="Enter your swatch, and see at once how big the garment would be and what to change."
    >
      <SwatchStep
        report={filledReport(testerId, loaded.inHand)}
        next={nextPage(loaded, "swatch")}
        added={itemKey(add)}
        isSent={isSentUnchanged(loaded.inHand)}
      />
    </TesterFrame>
  );
}
