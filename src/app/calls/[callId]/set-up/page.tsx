import type { Metadata } from "next";
import Link from "next/link";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall, type LoadedCall } from "@/features/calls/loaders";
import { AgreementVersions } from "@/features/recruiting/listing/set-up/agreement-versions";
import { NoListing } from "@/features/recruiting/listing/set-up/no-listing";
import { ListingForm } from "@/features/recruiting/listing/set-up/listing-form";
import { agreements, editedListing } from "@/features/recruiting/listing/edited-data";
import { listingFormContent } from "@/features/recruiting/listing/set-up/listing-form-content";
import { chosenPieces, countsEarlier, followedCall } from "@/features/testing/again/again-data";
import { PiecesForm } from "@/features/testing/again/pieces-form";
import { CountTogether } from "@/features/testing/again/count-together";
import { ButtonLink } from "@/ui/button";
import { Notice } from "@/ui/notice";

export const metadata: Metadata = { title: CALL_PAGES.setUp.name };

export default async function ListingPage({ params }: PageProps<"/calls/[callId]/set-up">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, call, revision, viewer, mayEdit } = loaded;
  const [listing, versions, followed] = await Promise.all([
    editedListing(access),
    agreements(access),
    followedCall(access),
  ]);
  const isOpen = call.status === "open";
  if (listing === null)
    return (
      <CallPage loaded={loaded} page="setUp">
        <NoListing callId={callId} mayBegin={mayEdit && isOpen} isOpen={isOpen} />
      </CallPage>
    );
  const isPublished = listing.publishedAt !== null;
  return (
    <CallPage
      loaded={loaded}
      page="setUp"

      intro={
        isPublished
          ? "Published: everyone with the link can read it."
          : "A draft: only you and your helpers can see it."
      }
      actions={
        <ButtonLink href={`/open-calls/${callId}`} look="quiet">
          {isPublished ? "See the public page" : "Preview the public page"}
        </ButtonLink>
      }
    >
      {followed !== null && mayEdit && isOpen ? (
        <Notice title={`This test follows “${followed.title}”`}>
          <p>
            {isPublished ? "You can now" : "Choose the dates and publish it, then"}{" "}
            <Link href={`/calls/${callId}/progress/again`} className="text-link">
              invite earlier testers
            </Link>
            .
          </p>
        </Notice>
      ) : null}
      {followed === null ? null : <Follows {...{ loaded, isOpen }} title={followed.title} />}
      <ListingForm
        callId={callId}
        listing={listing}
        mayEdit={mayEdit && isOpen}
        {...listingFormContent(revision.document, { listing, unit: viewer.unit })}
      />
      {versions.length > 0 ? <AgreementVersions versions={versions} /> : null}
    </CallPage>
  );
}

interface FollowsProps {
  readonly loaded: LoadedCall;
  readonly isOpen: boolean;
  /** Of the earlier test. */
  readonly title: string;
}

/** What a test that follows another one makes, and whether their reports count together. */
async function Follows({ loaded: { access, call, revision, mayEdit }, isOpen, title }: FollowsProps) {
  const [counting, pieces] = await Promise.all([
    countsEarlier(access, revision.document),
    chosenPieces(access, revision.document),
  ]);
  const { callId } = call;
  return (
    <div className="grid items-start gap-x-6 lg:grid-cols-2">
      {mayEdit && isOpen && pieces.length > 1 ? <PiecesForm callId={callId} pieces={pieces} /> : null}
      <CountTogether {...{ callId, title, mayEdit }} {...counting} />
    </div>
  );
}
