import { ImageResponse } from "next/og";
import { publishedCall } from "@/features/recruiting/listing/access";
import { OpenCallPicture } from "@/features/recruiting/listing/open-call/open-call-picture";
import { loadPublished } from "@/features/recruiting/listing/loaders";
import { pictureWords } from "@/features/recruiting/listing/open-call/picture-copy";
import { readMainPicture } from "@/features/testing/photos/sample-data";
import { pictureFonts } from "@/server/picture-fonts";
import { asJpeg } from "@/server/as-jpeg";

export const alt = "Tester call: the garment, its sizes and the last day to apply";
export const size = { width: 1200, height: 630 };
export const contentType = "image/jpeg";

/** Long enough for the many who fetch it when a link is shared, short enough for a day that is changed. */
const CACHED = "public, max-age=600";

export default async function OpenCallImage({ params }: { readonly params: Promise<{ readonly callId: string }> }) {
  const listing = await loadPublished((await params).callId);
  const [words, photo, fonts] = await Promise.all([
    pictureWords(listing),
    readMainPicture(await publishedCall(listing.callId)),
    pictureFonts(),
  ]);
  const drawn = new ImageResponse(<OpenCallPicture {...{ words, photo }} />, { ...size, fonts });
  const headers = { "Content-Type": contentType, "Cache-Control": CACHED };
  return new Response(await asJpeg(await drawn.arrayBuffer()), { headers });
}
