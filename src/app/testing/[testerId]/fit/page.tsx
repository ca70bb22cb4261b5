import type { Metadata } from "next";
import { FitStep } from "@/features/testing/report/steps/fit-step";
import { filledReport } from "@/features/testing/report/filled-report";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { nextPage } from "@/features/testing/home/tester-steps";

export const metadata: Metadata = { title: "Fit" };

export default async function FitPage({ params }: PageProps<"/testing/[testerId]/fit">) {
  const { testerId } = await params;
  const loaded = await loadTester(testerId);
  return (
    <TesterFrame
      loaded={loaded}
      step="fit"
      title="How it fits"
      intro="How does the garment fit in each place? Only the designer and their helpers read this."
    >
      <FitStep report={filledReport(testerId, loaded.inHand)} next={nextPage(loaded, "fit")} />
    </TesterFrame>
  );
}
