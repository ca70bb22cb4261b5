import type { Metadata } from "next";
import { chosenSize } from "@/features/recruiting/listing/open-call/chosen-size";
import { OpenCallView } from "@/features/recruiting/listing/open-call/open-call-view";
import { openCallSentence } from "@/features/recruiting/listing/open-call/open-call-copy";
import { publishedCall } from "@/features/recruiting/listing/access";
import { loadOpenCall, type OpenCallPage } from "@/features/recruiting/listing/loaders";
import { callAccess } from "@/features/calls/access";
import { readPreviewedSample, readPublicSample, type SamplePhoto } from "@/features/testing/photos/sample-data";
import { ShownGallery } from "@/features/testing/photos/shown-gallery";
import { readPreviewedPhotos, readShownPhotos, type ShownPhoto } from "@/features/testing/photos/shown-photo-data";
import { SampleGallery } from "@/features/testing/photos/sample-gallery";
import { GarmentGlance } from "@/features/patterns/drawing/garment-glance";
import { PieceGlance } from "@/features/patterns/drawing/piece-glance";
import { YarnForTester } from "@/features/results/yarn/yarn-for-tester";
import { yarnForReader } from "@/features/results/yarn/yarn-for-tester-data";
import { environment } from "@/server/environment";

type Props = PageProps<"/open-calls/[callId]">;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { listing } = await loadOpenCall((await params).callId);
  const [title, description] = [listing.title, openCallSentence(listing)];
  const isPreview = listing.taking === "preview";
  return {
    // Whoever shows a link has no address to go on from.
    metadataBase: new URL(environment().NEXTAUTH_URL),
    title,
    description,
    alternates: { canonical: `/open-calls/${listing.callId}` },
    openGraph: { type: "website", siteName: "Sizewright", url: `/open-calls/${listing.callId}`, title, description },
    twitter: { card: "summary_large_image", title, description },
    ...(isPreview ? { robots: { index: false } } : {}),
  };
}

export default async function PublicCallPage({ params, searchParams }: Props) {
  const page = await loadOpenCall((await params).callId);
  const { listing, viewer } = page;
  const query = await searchParams;
  const unit = query.unit === "in" || query.unit === "cm" ? query.unit : (viewer?.unit ?? "cm");
  const size = chosenSize(listing, query.size);
  const needs =
    size === undefined || listing.taking === "preview"
      ? []
      : await yarnForReader(await publishedCall(listing.callId), size.id);
  const [photos, shown] = await Promise.all([sampleFor(page), shownFor(page)]);
  return (
    <OpenCallView
      {...{ page, unit, size }}
      photos={photos.length === 0 ? null : <SampleGallery photos={photos} patternName={listing.pattern.name} />}
      testerPhotos={<ShownGallery photos={shown} pattern={listing.pattern} />}
      drawing={
        listing.pieces === null ? (
          <GarmentGlance pattern={listing.tested} unit={unit} mostPieces={1} />
        ) : (
          <PieceGlance pattern={listing.tested} />
        )
      }
      yarn={needs.length > 0 ? <YarnForTester {...{ needs, unit }} yarns={listing.pattern.yarns} /> : null}
    />
  );
}

async function sampleFor({ listing: { callId, taking }, viewer }: OpenCallPage): Promise<SamplePhoto[]> {
  if (taking !== "preview") return await readPublicSample(await publishedCall(callId));
  return viewer === null ? [] : await readPreviewedSample(await callAccess(viewer, callId, "viewer"));
}

async function shownFor({ listing: { callId, taking }, viewer }: OpenCallPage): Promise<ShownPhoto[]> {
  if (taking !== "preview") return await readShownPhotos(await publishedCall(callId));
  return viewer === null ? [] : await readPreviewedPhotos(await callAccess(viewer, callId, "viewer"));
}
