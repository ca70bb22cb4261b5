import { noteSeen } from "@/features/recruiting/views/seen-data";
import { photoAccess } from "@/features/testing/photos/photo-access";
import { photoFile } from "@/features/testing/photos/photo-data";
import { photoSizeSchema } from "@/features/testing/photos/photo-schema";
import { foundOr404 } from "@/server/found-or-404";
import { notFound } from "next/navigation";

const FOR_ONE = { "Cache-Control": "private, max-age=300", Vary: "Accept, Cookie" };
/** A call that is taken back, or a photo that is deleted, is soon gone from shared caches, too. */
const FOR_ALL = { "Cache-Control": "public, max-age=300", Vary: "Accept" };

/** A photo, for those who may see it: that is checked each time, and no cache but the browser's own keeps it, five minutes. */
export async function GET(request: Request, { params }: RouteContext<"/photos/[photoId]">): Promise<Response> {
  const access = await foundOr404(photoAccess((await params).photoId));
  const { size } = photoSizeSchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  const format = request.headers.get("accept")?.includes("image/webp") === true ? "webp" : "jpg";
  const file = await photoFile(access, { size, format });
  if (file === null) notFound();
  const { seenBy } = access;
  if (seenBy !== null) await noteSeen(seenBy.call, { kind: "photos", testers: [seenBy.testerId] });
  return new Response(new Uint8Array(file), {
    headers: {
      "Content-Type": format === "webp" ? "image/webp" : "image/jpeg",
      "Content-Disposition": `inline; filename="photo.${format}"`,
      ...(access.isPublic ? FOR_ALL : FOR_ONE),
      "X-Content-Type-Options": "nosniff",
    },
  });
}
