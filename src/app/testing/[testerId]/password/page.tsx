import type { Metadata } from "next";
import { AskLinkForm } from "@/features/accounts/email-links/ask-link-form";
import { PASSWORD_HINT } from "@/features/accounts/password-hint";
import { NAME_MOST } from "@/features/accounts/schema";
import { isMailOn } from "@/features/mail/mail-status";
import { BackToTest } from "@/features/testing/home/components/back-to-test";
import { TesterPasswordForm } from "@/features/testing/home/components/tester-password-form";
import { loadTester, type LoadedTester } from "@/features/testing/home/loaders";
import { linkToAccount } from "@/features/testing/home/password-actions";
import { optionalViewer } from "@/server/viewer";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Set a password" };

const WHY =
  "With a password you can sign in to this test from any device. Your invitation link then asks you to sign in, also in browsers that used it before.";

export default async function TesterPasswordPage({ params }: PageProps<"/testing/[testerId]/password">) {
  const { tester } = await loadTester((await params).testerId);
  return (
    <Page
      title="Set a password"
      above={<BackToTest tester={tester} />}
      intro={tester.hasAccount ? null : WHY}
      width="narrow"
    >
      {tester.hasAccount ? (
        <Notice tone="done">This test belongs to your account. Sign in to open it on any device.</Notice>
      ) : (
        <WayToAccount tester={tester} />
      )}
    </Page>
  );
}

/** Signed in: their account. Else an account by a mailed link or, without mail, by a password. */
async function WayToAccount({ tester: { testerId, name, email } }: Pick<LoadedTester, "tester">) {
  const viewer = await optionalViewer();
  if (viewer !== null)
    return (
      <>
        <p className="mb-4 wrap-anywhere">
          You are signed in as <bdi className="font-semibold">{viewer.name}</bdi> ({viewer.email}).
        </p>
        <OneButtonForm
          action={linkToAccount}
          sends={{ testerId }}
          button="Use this account for the test"
          waiting="One moment …"
          look="main"
        />
      </>
    );
  if (isMailOn())
    return (
      <>
        <p className="mb-4">
          A link comes to your address. Behind it you choose a password, or sign in if you have an account; then come
          back to this page to use the account for the test.
        </p>
        <AskLinkForm asksTo="sign-up" email={email ?? ""} next={`/testing/${testerId}/password`} />
      </>
    );
  return (
    <TesterPasswordForm
      testerId={testerId}
      name={Array.from(name ?? "")
        .slice(0, NAME_MOST)
        .join("")}
      email={email ?? ""}
      passwordHint={PASSWORD_HINT}
    />
  );
}
