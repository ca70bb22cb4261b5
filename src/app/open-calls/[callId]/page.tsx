import type { Metadata } from "next";
import { OpenCallView } from "@/features/recruiting/listing/open-call/open-call-view";
import { openCallSentence } from "@/features/recruiting/listing/open-call/open-call-copy";
import { loadOpenCall } from "@/features/recruiting/listing/loaders";
import { PieceGlance } from "@/features/patterns/drawing/piece-glance";
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

export default async function OpenCallPage({ params, searchParams }: Props) {
  const page = await loadOpenCall((await params).callId);
  const { unit: asked } = await searchParams;
  const unit = asked === "in" || asked === "cm" ? asked : (page.viewer?.unit ?? "cm");
  return <OpenCallView page={page} unit={unit} drawing={<PieceGlance pattern={page.listing.pattern} unit={unit} />} />;
}
