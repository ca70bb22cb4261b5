import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { PhotoFiles } from "./photo-files";

/** Nobody but the user who runs Sizewright reads what people sent. */
export const PRIVATE_FOLDER = { recursive: true, mode: 0o700 } as const;
export const PRIVATE_FILE = { mode: 0o600 } as const;

/** Photos in a folder of this machine. */
export function photosOnDisk(root: string): PhotoFiles {
  const pathFor = async (name: string) => {
    const path = join(root, name);
    await mkdir(dirname(path), PRIVATE_FOLDER);
    return path;
  };
  return {
    take: async (path, name) => await rename(path, await pathFor(name)),
    write: async (name, bytes) => await writeFile(await pathFor(name), bytes, PRIVATE_FILE),
    read: async (name) => {
      try {
        return await readFile(join(root, name));
      } catch (error) {
        if (isAbsent(error)) return null;
        throw error;
      }
    },
    delete: async (name) => await rm(join(root, name), { force: true }),
    deleteFolder: async (folder) => await rm(join(root, folder), { recursive: true, force: true }),
    deleteBefore: async (folder, moment) => await deleteFilesBefore(join(root, folder), moment),
  };
}

/** Deletes files of a folder that were last written before a moment; a folder that is not there has none. */
export async function deleteFilesBefore(folder: string, moment: Date): Promise<void> {
  const names = await readdir(folder).catch((error: unknown) => {
    if (isAbsent(error)) return [];
    throw error;
  });
  for (const name of names) {
    const path = join(folder, name);
    const found = await stat(path).catch(() => null);
    if (found !== null && found.mtime < moment) await rm(path, { force: true });
  }
}

function isAbsent(error: unknown): boolean {
  return error instanceof Error && "code" in error && error.code === "ENOENT";
}
