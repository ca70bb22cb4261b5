import "server-only";
import { database } from "@/server/database";
import {
  deleteOriginal,
  deleteOriginalsBefore,
  deletePhotoFiles,
  readOriginal,
  storePicture,
} from "@/server/photo-store";
import { pictureSizes, type PictureSizes } from "./picture-sizes";

// Swept every five minutes, so none is older than an hour.
const OLDEST_MS = 50 * 60_000;

/** The photo that has waited the longest for its sizes, null where none waits. */
export async function nextPhoto(): Promise<string | null> {
  const row = await database().photo.findFirst({
    where: { state: "received" },
    orderBy: { createdAt: "asc" },
    select: { id: true },
  });
  return row?.id ?? null;
}

/** The worker's job: makes the sizes of a photo, and deletes it as it was sent. */
export async function makePictures(id: string): Promise<void> {
  const made = await picturesOf(id);
  if (made.status === "ready") for (const { name, bytes } of made.pictures) await storePicture(id, name, bytes);
  const data =
    made.status === "ready"
      ? ({ state: "ready", width: made.width, height: made.height } as const)
      : ({ state: "failed", reason: made.reason } as const);
  await database().photo.updateMany({ where: { id, state: "received" }, data });
  await deleteOriginal(id);
}

async function picturesOf(id: string): Promise<PictureSizes> {
  const bytes = await readOriginal(id);
  if (bytes === null) return { status: "failed", reason: "This photo was not stored whole. Send it again." };
  return await pictureSizes(bytes);
}

/** A photo whose row is gone and whose files are not, null where there is none. */
export async function nextDeletedPhoto(): Promise<string | null> {
  const row = await database().deletedPhoto.findFirst({ orderBy: { deletedAt: "asc" }, select: { id: true } });
  return row?.id ?? null;
}

/** The worker's job: deletes the files of a photo, and only then what says that they are to be deleted. */
export async function deleteFilesOfPhoto(id: string): Promise<void> {
  await deletePhotoFiles(id);
  await database().deletedPhoto.deleteMany({ where: { id } });
}

/** There is always something to look for. */
export async function nextSweep(): Promise<string | null> {
  return await Promise.resolve("originals");
}

/** The worker's job: deletes what was sent nearly an hour ago, whatever became of it. */
export async function sweepOriginals(now = new Date()): Promise<void> {
  await deleteOriginalsBefore(new Date(now.getTime() - OLDEST_MS));
}
