import type { Metadata } from "next";
import { PrivacyNotice } from "@/features/recruiting/listing/privacy/privacy-notice";
import { BackToTest } from "@/features/testing/home/components/back-to-test";
import { loadTester } from "@/features/testing/home/loaders";
import { environment } from "@/server/environment";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Privacy notice" };

export default async function TesterPrivacyPage({ params }: PageProps<"/testing/[testerId]/privacy">) {
  const { tester } = await loadTester((await params).testerId);
  const { call, notice } = tester;
  return (
    <Page
      title="Privacy notice"
      above={<BackToTest tester={tester} />}
      intro="What is stored about people who take part in this test."
      width="narrow"
    >
      <PrivacyNotice designer={call.designerName} facts={notice} site={new URL(environment().NEXTAUTH_URL).host} />
    </Page>
  );
}
