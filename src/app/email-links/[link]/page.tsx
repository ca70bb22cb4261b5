import type { Metadata } from "next";
import { loadEmailLink } from "@/features/accounts/email-links/email-link-loaders";
import { EmailLinkView } from "@/features/accounts/email-links/email-link-view";
import { DeleteAccountView } from "@/features/testing/account-data/delete-account-view";
import { deleteByLink } from "@/features/testing/account-data/deletion-actions";
import { accountDeletion } from "@/features/testing/account-data/deletion-data";
import { OneButtonForm } from "@/ui/one-button-form";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your link", robots: { index: false, follow: false } };

export default async function EmailLinkRoute({ params }: PageProps<"/email-links/[link]">) {
  const { link } = await params;
  const page = await loadEmailLink(link);
  const { purpose, end, account, address } = page;
  if (purpose !== "delete_account" || end !== null || account === null)
    return <EmailLinkView link={link} page={page} />;
  return (
    <Page title="Delete your account" intro={address} width="narrow">
      <DeleteAccountView deletion={await accountDeletion(account.id)}>
        <OneButtonForm
          action={deleteByLink}
          sends={{ link }}
          button="Delete my account"
          waiting="Deleting …"
          look="main"
        />
      </DeleteAccountView>
    </Page>
  );
}
