import { createWriteStream } from "node:fs";
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { environment } from "./environment";

/** Nobody but the user who runs Sizewright reads what people sent. */
const PRIVATE_FOLDER = { recursive: true, mode: 0o700 } as const;
const PRIVATE_FILE_MODE = 0o600;

export class TooManyBytes extends Error {}

/** Ids and file names come from our own code, which has checked that they are UUIDs and known names. */
function originalPath(id: string): string {
  return join(folderOf("originals"), id);
}

function folderOf(kind: "originals" | "pictures"): string {
  return join(resolve(environment().SIZEWRIGHT_FOLDER), "photos", kind);
}

/**
 * Writes a photo as it was sent, piece by piece; under its own name only once it is whole.
 *
 * @returns its size in bytes. @throws {TooManyBytes} where it is larger than `maxBytes`; nothing of it stays.
 */
export async function storeOriginal(id: string, body: AsyncIterable<Uint8Array>, maxBytes: number): Promise<number> {
  await mkdir(folderOf("originals"), PRIVATE_FOLDER);
  const partial = `${originalPath(id)}.${crypto.randomUUID()}.part`;
  let bytes = 0;
  const counted = new Transform({
    transform: (chunk: Buffer, _encoding, done) => {
      bytes += chunk.length;
      if (bytes > maxBytes) done(new TooManyBytes());
      else done(null, chunk);
    },
  });
  try {
    await pipeline(body, counted, createWriteStream(partial, { mode: PRIVATE_FILE_MODE }));
    await rename(partial, originalPath(id));
  } catch (error) {
    await rm(partial, { force: true });
    throw error;
  }
  return bytes;
}

/** @returns null where there is none any more. */
export async function readOriginal(id: string): Promise<Buffer | null> {
  return await readOrNull(originalPath(id));
}

export async function deleteOriginal(id: string): Promise<void> {
  await rm(originalPath(id), { force: true });
}

/** Deletes what was sent before a moment and is still there, half-sent files among it. */
export async function deleteOriginalsBefore(moment: Date): Promise<void> {
  const names = await readdir(folderOf("originals")).catch(emptyWhereAbsent);
  for (const name of names) {
    const path = join(folderOf("originals"), name);
    const found = await stat(path).catch(() => null);
    if (found !== null && found.mtime < moment) await rm(path, { force: true });
  }
}

/** @param name such as `960.webp`. */
export async function storePicture(id: string, name: string, bytes: Uint8Array): Promise<void> {
  const folder = join(folderOf("pictures"), id);
  await mkdir(folder, PRIVATE_FOLDER);
  await writeFile(join(folder, name), bytes, { mode: PRIVATE_FILE_MODE });
}

/** @returns null where there is none any more. */
export async function readPicture(id: string, name: string): Promise<Buffer | null> {
  return await readOrNull(join(folderOf("pictures"), id, name));
}

/** Deletes every file of a photo. */
export async function deletePhotoFiles(id: string): Promise<void> {
  await deleteOriginal(id);
  await rm(join(folderOf("pictures"), id), { recursive: true, force: true });
}

async function readOrNull(path: string): Promise<Buffer | null> {
  try {
    return await readFile(path);
  } catch (error) {
    if (isAbsent(error)) return null;
    throw error;
  }
}

function emptyWhereAbsent(error: unknown): string[] {
  if (isAbsent(error)) return [];
  throw error;
}

function isAbsent(error: unknown): boolean {
  return error instanceof Error && "code" in error && error.code === "ENOENT";
}
