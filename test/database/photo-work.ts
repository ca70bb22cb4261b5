import { Blob } from "node:buffer";
import { randomUUID } from "node:crypto";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { receivePhoto } from "@/features/testing/photos/photo-mutations";
import type { PhotoOwner } from "@/features/testing/photos/photo-owner-access";
import type { SentPhoto } from "@/features/testing/photos/photo-schema";
import {
  deleteFilesOfPhoto,
  makePictures,
  nextDeletedPhoto,
  nextPhoto,
} from "@/features/testing/photos/photo-work-mutations";

export const RED = { width: 400, height: 200, channels: 3, background: "#c00" } as const;

/** A folder for the photos of one test file. */
export function ownPhotoFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-photos-"));
  process.env.SIZEWRIGHT_FOLDER = folder;
  return folder;
}

export function jpeg(): Promise<Buffer> {
  return sharp({ create: RED }).jpeg().toBuffer();
}

export async function sendPhoto(
  owner: PhotoOwner,
  bytes: Uint8Array,
  photoId: string = randomUUID(),
  shows: Partial<SentPhoto> = {},
) {
  const photo = { photoId, view: "front", note: "", ...shows } as const;
  const problem = await receivePhoto(owner, photo, new Blob([bytes]).stream());
  return { photoId, problem };
}

/** What the worker does until nothing waits any more. */
export async function workOnPhotos(): Promise<void> {
  for (let id = await nextPhoto(); id !== null; id = await nextPhoto()) await makePictures(id);
  for (let id = await nextDeletedPhoto(); id !== null; id = await nextDeletedPhoto()) await deleteFilesOfPhoto(id);
}
