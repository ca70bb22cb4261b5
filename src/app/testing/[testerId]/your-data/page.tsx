import type { Metadata } from "next";
import { BackToTest } from "@/features/testing/home/components/back-to-test";
import { StoredDataView } from "@/features/testing/home/components/stored-data-view";
import { storedDataOfTester } from "@/features/testing/home/stored-data";
import { loadTester } from "@/features/testing/home/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your data" };

export default async function StoredDataPage({ params }: PageProps<"/testing/[testerId]/your-data">) {
  const { access, tester } = await loadTester((await params).testerId);
  return (
    <Page title="Your data" above={<BackToTest tester={tester} />} width="narrow">
      <StoredDataView tester={tester} stored={await storedDataOfTester(access)} />
    </Page>
  );
}
