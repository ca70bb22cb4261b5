import type { Metadata } from "next";
import { CountsStep } from "@/features/testing/report/steps/counts-step";
import { filledReport } from "@/features/testing/report/filled-report";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { nextPage } from "@/features/testing/home/tester-steps";

export const metadata: Metadata = { title: "Your counts" };

export default async function CountsPage({ params }: PageProps<"/testing/[testerId]/counts">) {
  const { testerId } = await params;
  const loaded = await loadTester(testerId);
  return (
    <TesterFrame
      loaded={loaded}
      step="counts"
      title="Your counts"
      intro="Enter a number only where yours differs from the pattern for your size."
    >
      <CountsStep report={filledReport(testerId, loaded.inHand)} next={nextPage(loaded, "counts")} />
    </TesterFrame>
  );
}
