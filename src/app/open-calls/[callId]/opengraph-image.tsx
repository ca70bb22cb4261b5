import { ImageResponse } from "next/og";
import { OpenCallPicture } from "@/features/recruiting/listing/open-call/open-call-picture";
import { loadPublished } from "@/features/recruiting/listing/loaders";
import { pictureWords } from "@/features/recruiting/listing/open-call/picture-copy";
import { pictureFonts } from "@/server/picture-fonts";

export const alt = "Tester call: the garment, its sizes and the last day to apply";
export const size = { width: 1200, height: 630 };
export const contentType = "image/png";

/** Long enough for the many who fetch it when a link is shared, short enough for a day that is changed. */
const CACHED = "public, max-age=600";

export default async function OpenCallImage({ params }: { readonly params: Promise<{ readonly callId: string }> }) {
  const listing = await loadPublished((await params).callId);
  const [words, fonts] = await Promise.all([pictureWords(listing), pictureFonts()]);
  return new ImageResponse(<OpenCallPicture words={words} />, {
    ...size,
    fonts,
    headers: { "Cache-Control": CACHED },
  });
}
