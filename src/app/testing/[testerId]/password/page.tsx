import type { Metadata } from "next";
import { PASSWORD_HINT } from "@/features/accounts/password-hint";
import { NAME_MOST } from "@/features/accounts/schema";
import { BackToTest } from "@/features/testing/home/components/back-to-test";
import { TesterPasswordForm } from "@/features/testing/home/components/tester-password-form";
import { loadTester } from "@/features/testing/home/loaders";
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
      intro={
        hasAccount
          ? null
          : "With a password you can sign in to this test from any device. Your invitation link then asks you to sign in, also in browsers that used it before."
      }
      width="narrow"
    >
      {hasAccount ? (
        <Notice tone="done">This test belongs to your account. Sign in to open it on any device.</Notice>
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
