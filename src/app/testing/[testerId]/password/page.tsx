import type { Metadata } from "next";
import { PASSWORD_HINT } from "@/features/accounts/password-hint";
import { NAME_MOST } from "@/features/accounts/schema";
import { BackToTest } from "@/features/testers/components/back-to-test";
import { TesterPasswordForm } from "@/features/testers/components/tester-password-form";
import { loadTester } from "@/features/testers/loaders";
import { Notice } from "@/ui/notice";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Set a password" };

export default async function TesterPasswordPage({ params }: PageProps<"/testing/[testerId]/password">) {
  const { tester } = await loadTester((await params).testerId);
  const { testerId, hasAccount, name, email } = tester;
  return (
    <Page
      title="Set a password"
      above={<BackToTest tester={tester} />}
      intro="With a password you come in to this test by signing in, from any device. The link of your invitation, and browsers that it let in, are then no good any more."
      width="narrow"
    >
      {hasAccount ? (
        <Notice tone="done">This test has your account: you come in by signing in.</Notice>
      ) : (
        <TesterPasswordForm
          testerId={testerId}
          name={Array.from(name ?? "")
            .slice(0, NAME_MOST)
            .join("")}
          email={email ?? ""}
          passwordHint={PASSWORD_HINT}
        />
      )}
    </Page>
  );
}
