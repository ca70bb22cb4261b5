import type { Metadata } from "next";
import Link from "next/link";
import { AskDeletionButton } from "@/features/accounts/email-links/ask-deletion-button";
import { isMailOn } from "@/features/mail/mail-status";
import { DeleteAccountForm } from "@/features/testing/account-data/delete-account-form";
import { DeleteAccountView } from "@/features/testing/account-data/delete-account-view";
import { accountDeletion } from "@/features/testing/account-data/deletion-data";
import { requireViewer } from "@/server/viewer";
import { Notice } from "@/ui/notice";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Delete your account" };

export default async function DeleteAccountPage({ searchParams }: PageProps<"/account/delete">) {
  const { accountId } = await requireViewer();
  const isMailed = (await searchParams).mailed === "link";
  return (
    <Page title="Delete your account" above={<Above />} width="narrow">
      {isMailed ? (
        <Notice tone="done" title="Check your mail">
          A link is on its way to your address. It works once, for one hour, and asks you again.
        </Notice>
      ) : null}
      <DeleteAccountView deletion={await accountDeletion(accountId)}>
        <DeleteAccountForm />
        {isMailOn() ? (
          <div className="mt-6">
            <p className="mb-2 text-soft">You don’t know your password?</p>
            <AskDeletionButton />
          </div>
        ) : null}
      </DeleteAccountView>
    </Page>
  );
}

function Above() {
  return (
    <Link href="/account/your-data" className="text-link">
      Your data
    </Link>
  );
}
