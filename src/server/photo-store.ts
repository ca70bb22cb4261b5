import { createWriteStream } from "node:fs";
import { mkdir, rm } from "node:fs/promises";
import { join, resolve } from "node:path";
import { Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { environment, type Environment } from "./environment";
import { photosInBucket } from "./photo-bucket";
import { deleteFilesBefore, PRIVATE_FILE, PRIVATE_FOLDER, photosOnDisk } from "./photo-disk";
import type { PhotoFiles } from "./photo-files";

export class TooManyBytes extends Error {}

const opened = new WeakMap<Environment, Promise<PhotoFiles>>();

/** The bucket that the settings name, else a folder. */
function files(): Promise<PhotoFiles> {
  const settings = environment();
  const known = opened.get(settings);
  if (known !== undefined) return known;
  const { PHOTOS_URL } = settings;
  const made = PHOTOS_URL === undefined ? Promise.resolve(photosOnDisk(photosFolder())) : photosInBucket(PHOTOS_URL);
  opened.set(settings, made);
  return made;
}

function photosFolder(): string {
  return join(resolve(environment().SIZEWRIGHT_FOLDER), "photos");
}

// Ids and file names come from our own code, which has checked that they are UUIDs and known names.
const ORIGINALS = "originals";
const originalName = (id: string) => `${ORIGINALS}/${id}`;
const picturesFolder = (id: string) => `pictures/${id}`;
/** What is being sent, on this machine until it is whole. */
const arrivingFolder = () => join(photosFolder(), "arriving");

/**
 * Writes a photo as it was sent, piece by piece; under its own name only once it is whole.
 *
 * @returns its size in bytes. @throws {TooManyBytes} where it is larger than `maxBytes`; nothing of it stays.
 */
export async function storeOriginal(id: string, body: AsyncIterable<Uint8Array>, maxBytes: number): Promise<number> {
  await mkdir(arrivingFolder(), PRIVATE_FOLDER);
  const arriving = join(arrivingFolder(), crypto.randomUUID());
  let bytes = 0;
  const counted = new Transform({
    transform: (chunk: Buffer, _encoding, done) => {
      bytes += chunk.length;
      if (bytes > maxBytes) done(new TooManyBytes());
      else done(null, chunk);
    },
  });
  try {
    await pipeline(body, counted, createWriteStream(arriving, PRIVATE_FILE));
    await (await files()).take(arriving, originalName(id));
  } catch (error) {
    await rm(arriving, { force: true });
    throw error;
  }
  return bytes;
}

/** @returns null where there is none any more. */
export async function readOriginal(id: string): Promise<Buffer | null> {
  return await (await files()).read(originalName(id));
}

export async function deleteOriginal(id: string): Promise<void> {
  await (await files()).delete(originalName(id));
}

/** Deletes what was sent before a moment and is still there, half-sent files among it. */
export async function deleteOriginalsBefore(moment: Date): Promise<void> {
  await deleteFilesBefore(arrivingFolder(), moment);
  await (await files()).deleteBefore(ORIGINALS, moment);
}

/** @param name such as `960.webp`. */
export async function storePicture(id: string, name: string, bytes: Uint8Array): Promise<void> {
  await (await files()).write(`${picturesFolder(id)}/${name}`, bytes);
}

/** @returns null where there is none any more. */
export async function readPicture(id: string, name: string): Promise<Buffer | null> {
  return await (await files()).read(`${picturesFolder(id)}/${name}`);
}

/** Deletes every file of a photo. */
export async function deletePhotoFiles(id: string): Promise<void> {
  await deleteOriginal(id);
  await (await files()).deleteFolder(picturesFolder(id));
}
