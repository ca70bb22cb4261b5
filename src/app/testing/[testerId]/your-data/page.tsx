import type { Metadata } from "next";
import { dataViews } from "@/features/recruiting/views/view-data";
import { ViewList } from "@/features/recruiting/views/view-list";
import { testerScope } from "@/features/testing/home/access";
import { BackToTest } from "@/features/testing/home/components/back-to-test";
import { StoredDataView } from "@/features/testing/home/components/stored-data-view";
import { HabitSection } from "@/features/testing/habits/habit-section";
import { storedDataOfTester } from "@/features/testing/home/stored-data";
import { loadTester } from "@/features/testing/home/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your data" };

export default async function StoredDataPage({ params }: PageProps<"/testing/[testerId]/your-data">) {
  const { access, tester } = await loadTester((await params).testerId);
  const own = testerScope(access);
  const [stored, views] = await Promise.all([
    storedDataOfTester(access),
    dataViews({ OR: [{ tester: own }, { application: { tester: own } }] }),
  ]);
  return (
    <Page title="Your data" above={<BackToTest tester={tester} />} width="narrow">
      <StoredDataView
        {...{ tester, stored }}
        looked={<ViewList views={views} timeZone={tester.timeZone} />}
        habits={
          <HabitSection
            testerId={tester.testerId}
            designerName={tester.call.designerName}
            hasAccount={tester.hasAccount}
            {...stored.habits}
          />
        }
      />
    </Page>
  );
}
