import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { isMailOn } from "@/features/mail/mail-status";
import { BackToTest } from "@/features/testing/home/components/back-to-test";
import { loadTester } from "@/features/testing/home/loaders";
import { readOwnChoice } from "@/features/testing/reminders/choice-data";
import { OwnRemindersForm } from "@/features/testing/reminders/choice-forms";
import { STILL_COMES } from "@/features/testing/reminders/reminder-choice-copy";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Reminders" };

export default async function OwnRemindersPage({ params }: PageProps<"/testing/[testerId]/reminders">) {
  const { access, tester } = await loadTester((await params).testerId);
  if (!isMailOn()) notFound();
  const { choice, hasAccount } = await readOwnChoice(access);
  const { testerId, timeZone } = tester;
  return (
    <Page
      title="Reminders"
      above={<BackToTest tester={tester} />}
      intro={`${hasAccount ? "How often they come holds for all tests that you take part in. " : ""}${STILL_COMES}`}
      width="narrow"
    >
      <OwnRemindersForm {...{ testerId, choice, timeZone }} />
    </Page>
  );
}
