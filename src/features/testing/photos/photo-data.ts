import "server-only";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { readPicture } from "@/server/photo-store";
import type { Connection } from "@/server/transaction";
import { testerScope, type TesterAccess } from "../home/access";
import { OWN_PHOTO, toOwnPhoto, type OwnPhoto } from "./own-photo-data";
import { photoScope, type PhotoAccess } from "./photo-access";
import type { PhotoSize, PhotoUse } from "./photo-views";

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
