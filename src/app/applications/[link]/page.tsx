import type { Metadata } from "next";
import Link from "next/link";
import { DiscardStored } from "@/features/recruiting/applications/apply/discard-stored";
import { OwnView } from "@/features/recruiting/applications/own/own-view";
import { storageKeyOf } from "@/features/recruiting/applications/apply/storage-key";
import { loadOwnApplication } from "@/features/recruiting/applications/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your application", robots: { index: false, follow: false } };

export default async function OwnApplicationPage({ params }: PageProps<"/applications/[link]">) {
  const { link } = await params;
  const page = await loadOwnApplication(link);
  const { callId, callTitle, designer, pattern, listing } = page.application;
  const call = <bdi>{callTitle}</bdi>;
  return (
    <Page
      title="Your application"
      above={
        listing === null ? (
          call
        ) : (
          <Link href={`/open-calls/${callId}`} className="text-link">
            {call}
          </Link>
        )
      }
      intro={
        <>
          To test <bdi>{pattern.name}</bdi> by <bdi>{designer}</bdi>
        </>
      }
      width="narrow"
    >
      <OwnView link={link} page={page} />
      <DiscardStored storageKey={storageKeyOf(callId)} />
    </Page>
  );
}
