import "server-only";
import type { CallAccess } from "@/features/calls/access";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { publishedScope, type PublishedCall } from "@/features/recruiting/listing/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { readPicture } from "@/server/photo-store";
import type { Viewer } from "@/server/viewer";
import type { OwnPhoto } from "./own-photo-data";
import { photosOf } from "./photo-data";
import type { PhotoView } from "./photo-views";

export interface SamplePhoto {
  readonly photoId: string;
  readonly view: PhotoView;
  /** The designer's description; "" for none. */
  readonly note: string;
}

/** The main photo first. */
const MAIN_FIRST = [
  { mainSince: { sort: "desc", nulls: "last" } },
  { createdAt: "asc" },
  { id: "asc" },
] as const satisfies Prisma.PhotoOrderByWithRelationInput[];

/** Every photo of a pattern's sample, the main one first. */
export async function readOwnSample(access: PatternAccess): Promise<OwnPhoto[]> {
  return await photosOf({ pattern: patternScope(access) }, [...MAIN_FIRST]);
}

/** The sample of a published call's pattern as everybody sees it, the main photo first. */
export async function readPublicSample(published: PublishedCall): Promise<SamplePhoto[]> {
  return await readyPhotos({ calls: { some: publishedScope(published) } });
}

/** The same for members of a call that is not published. */
export async function readPreviewedSample({ pattern }: CallAccess): Promise<SamplePhoto[]> {
  return await readyPhotos(patternScope(pattern));
}

async function readyPhotos(pattern: Prisma.PatternWhereInput): Promise<SamplePhoto[]> {
  const rows = await database().photo.findMany({
    where: { state: "ready", pattern },
    orderBy: [...MAIN_FIRST],
    select: { id: true, view: true, note: true },
  });
  return rows.map(({ id, ...photo }) => ({ photoId: id, ...photo }));
}

/** The main photo of each of the viewer's patterns that has one, by the pattern's id. */
export async function readMainPhotos(viewer: Viewer): Promise<ReadonlyMap<string, SamplePhoto>> {
  const rows = await database().photo.findMany({
    where: { state: "ready", pattern: { memberships: { some: { accountId: viewer.accountId } } } },
    distinct: ["patternId"],
    orderBy: [...MAIN_FIRST],
    select: { id: true, patternId: true, view: true, note: true },
  });
  return new Map(rows.map(({ id, patternId, ...photo }) => [patternId ?? "", { photoId: id, ...photo }]));
}

/** The main photo of a published call's pattern as JPEG; null where there is none. */
export async function readMainPicture(published: PublishedCall): Promise<Buffer | null> {
  const [main] = await readPublicSample(published);
  return main === undefined ? null : await readPicture(main.photoId, "960.jpg");
}
