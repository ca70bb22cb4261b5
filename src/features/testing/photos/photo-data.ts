import "server-only";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { readPicture } from "@/server/photo-store";
import type { Connection } from "@/server/transaction";
import { testerScope, type TesterAccess } from "../home/access";
import { photoScope, type PhotoAccess } from "./photo-access";
import type { PhotoSize, PhotoUse, PhotoView } from "./photo-schema";

export interface OwnPhoto {
  readonly photoId: string;
  readonly view: PhotoView;
  /** What they wrote about it, or about the trouble spot that it shows; "" for nothing. */
  readonly note: string;
  readonly state: "received" | "ready" | "failed";
  /** Why it failed. */
  readonly reason: string | null;
}

export interface OwnPhotos {
  readonly photos: readonly OwnPhoto[];
  readonly allowed: readonly PhotoUse[];
  /** A child wears the garment: others see photos only if a parent or guardian agrees. */
  readonly isOfChild: boolean;
}

/** A tester's own photos, in the order in which they were sent, and for what they may be used. */
export async function readOwnPhotos(access: TesterAccess): Promise<OwnPhotos> {
  const tester = testerScope(access);
  const photos = await photosOf({ tester }, [{ createdAt: "asc" }, { id: "asc" }]);
  const consents = await database().photoConsent.findMany({ where: { tester }, orderBy: { use: "asc" } });
  return {
    isOfChild: await isWornByChild(database(), access),
    photos,
    allowed: consents.map(({ use }) => use),
  };
}

export async function countOwnPhotos(access: TesterAccess): Promise<number> {
  return await database().photo.count({ where: { tester: testerScope(access) } });
}

/**
 * Photos as whoever sent them sees them.
 *
 * @param owner by the proof of whoever asks.
 */
export async function photosOf(
  owner: Prisma.PhotoWhereInput,
  orderBy: Prisma.PhotoOrderByWithRelationInput[],
): Promise<OwnPhoto[]> {
  const rows = await database().photo.findMany({
    where: owner,
    orderBy,
    select: OWN_PHOTO,
  });
  return rows.map(toOwnPhoto);
}

export const OWN_PHOTO = {
  ...{ id: true, view: true, note: true, state: true, reason: true },
  trouble: { select: { happened: true } },
} satisfies Prisma.PhotoSelect;

export function toOwnPhoto({ id, trouble, ...photo }: Prisma.PhotoGetPayload<{ select: typeof OWN_PHOTO }>): OwnPhoto {
  return { photoId: id, ...photo, note: noteOf({ ...photo, trouble }) };
}

/** What a tester wrote about a photo: of its own, or of the trouble spot that it shows. */
export function noteOf({ note, trouble }: { readonly note: string; readonly trouble: { happened: string } | null }) {
  return note === "" ? (trouble?.happened ?? "") : note;
}

/** True where the tester said that they make the garment for a child. */
export async function isWornByChild(connection: Connection, access: TesterAccess): Promise<boolean> {
  const row = await connection.tester.findUnique({ where: testerScope(access), select: { isWornByChild: true } });
  return row?.isWornByChild ?? false;
}

interface Wanted {
  readonly size: PhotoSize;
  readonly format: "webp" | "jpg";
}

/** The file of a photo; null where it is not ready, or was deleted in the meantime. */
export async function photoFile(access: PhotoAccess, { size, format }: Wanted): Promise<Buffer | null> {
  const ready = await database().photo.count({ where: { ...photoScope(access), state: "ready" } });
  return ready === 0 ? null : await readPicture(access.photoId, `${size}.${format}`);
}
