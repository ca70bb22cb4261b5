import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Pool } from "pg";

/** Where a marker stands, and in how many rows; a file counts as one. */
export interface Trace {
  readonly place: string;
  readonly found: number;
}

/** Searches every row of every table: all columns as text, and bytes as they are. */
export async function tracesInTables(pool: Pool, marker: string): Promise<Trace[]> {
  const { rows: tables } = await pool.query<{ name: string }>(
    "SELECT c.relname AS name FROM pg_class c WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace ORDER BY 1",
  );
  const traces: Trace[] = [];
  for (const { name } of tables) {
    const { rows } = await pool.query<{ found: number }>(
      `SELECT count(*)::int AS found FROM "${name}" AS searched
       WHERE searched::text ILIKE $1 OR searched::text ILIKE $2`,
      [`%${marker}%`, `%${Buffer.from(marker).toString("hex")}%`],
    );
    traces.push({ place: name, found: rows[0]?.found ?? 0 });
  }
  return traces;
}

/** How many files a folder holds: of a photo, none may be left, whatever it shows. */
export async function filesIn(place: string, folder: string): Promise<Trace> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  return { place, found: entries.filter((entry) => entry.isFile()).length };
}

/** Searches files, their names among it, of any format. @param folders name -> path; a missing folder has no files. */
export async function tracesInFiles(folders: Readonly<Record<string, string>>, marker: string): Promise<Trace[]> {
  return await Promise.all(
    Object.entries(folders).map(async ([place, folder]) => {
      const names = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
      const files = names.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
      const holds = await Promise.all(
        files.map(async (file) => file.includes(marker) || (await readFile(file)).includes(marker)),
      );
      return { place, found: holds.filter(Boolean).length };
    }),
  );
}
