import type { Metadata } from "next";
import Link from "next/link";
import { ViewList } from "@/features/recruiting/views/view-list";
import { AccountDataView } from "@/features/testing/account-data/account-data-view";
import { viewsOfAccount } from "@/features/testing/account-data/account-record-data";
import { accountDeletion } from "@/features/testing/account-data/deletion-data";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your data" };

export default async function AccountDataPage() {
  const viewer = await requireViewer();
  const [deletion, views] = await Promise.all([accountDeletion(viewer.accountId), viewsOfAccount(viewer)]);
  return (
    <Page title="Your data" above={<Above />} width="narrow">
      <AccountDataView
        {...{ deletion }}
        name={viewer.name}
        email={viewer.email}
        looked={<ViewList views={views} timeZone="UTC" />}
      />
    </Page>
  );
}

function Above() {
  return (
    <Link href="/account" className="text-link">
      Your account
    </Link>
  );
}
