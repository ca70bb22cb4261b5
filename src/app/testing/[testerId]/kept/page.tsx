import type { Metadata } from "next";
import { BackToTest } from "@/features/testers/components/back-to-test";
import { KeptView } from "@/features/testers/components/kept-view";
import { keptOfTester } from "@/features/testers/kept-data";
import { loadTester } from "@/features/testers/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "What is kept of you" };

export default async function KeptPage({ params }: PageProps<"/testing/[testerId]/kept">) {
  const { access, tester } = await loadTester((await params).testerId);
  return (
    <Page title="What is kept of you, and who sees it" above={<BackToTest tester={tester} />} width="narrow">
      <KeptView tester={tester} kept={await keptOfTester(access)} />
    </Page>
  );
}
