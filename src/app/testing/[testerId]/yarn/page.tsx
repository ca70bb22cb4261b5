import type { Metadata } from "next";
import { YarnStep } from "@/features/testing/report/steps/yarn-step";
import { filledReport } from "@/features/testing/report/filled-report";
import { itemKey } from "@/features/testing/report/steps/item-key";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { nextPage } from "@/features/testing/home/tester-steps";

export const metadata: Metadata = { title: "Yarn" };

export default async function YarnPage({ params, searchParams }: PageProps<"/testing/[testerId]/yarn">) {
  const [{ testerId }, { yarn, add }] = await Promise.all([params, searchParams]);
  const loaded = await loadTester(testerId);
  const key = itemKey(add);
  return (
    <TesterFrame
      loaded={loaded}
      step="yarn"
      title="Yarn you used"
      intro="Weigh all your yarn before you start and what is left at the end, or count the balls."
    >
      <YarnStep
        report={filledReport(testerId, loaded.inHand)}
        next={nextPage(loaded, "yarn")}
        added={typeof yarn === "string" && key !== undefined ? { yarn, key } : null}
      />
    </TesterFrame>
  );
}
