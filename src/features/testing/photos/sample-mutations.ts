import "server-only";
import { patternEditScope, type PatternAccess } from "@/features/patterns/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";

function sampleScope(access: PatternAccess, photoId: string) {
  return { id: photoId, pattern: patternEditScope(access) };
}

/** Deletes a photo of a pattern's sample; its files go with it. */
export async function deleteFromSample(access: PatternAccess, photoId: string): Promise<void> {
  await database().photo.deleteMany({ where: sampleScope(access, photoId) });
}

/** Stores what a photo of the sample shows, for those who cannot see it. @throws {AppError} "not-found" where it is gone. */
export async function storeDescription(access: PatternAccess, photoId: string, note: string): Promise<void> {
  await changePhoto(access, photoId, { note });
}

/** Makes a photo the pattern's main one. @throws {AppError} "not-found" where it is gone. */
export async function storeMain(access: PatternAccess, photoId: string, now: Date): Promise<void> {
  await changePhoto(access, photoId, { mainSince: now });
}

async function changePhoto(access: PatternAccess, photoId: string, data: { note?: string; mainSince?: Date }) {
  const { count } = await database().photo.updateMany({ where: sampleScope(access, photoId), data });
  if (count === 0) throw new AppError("not-found");
}
