import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { ClientBase } from "pg";
import { z } from "zod";

export interface Migration {
  readonly name: string;
  readonly sql: string;
  readonly checksum: string;
}

/** A migration that cannot be applied, described in one sentence. */
export class MigrationError extends Error {}

// Any number will do, as long as nothing else in the database locks it.
const LOCK = 71_902_655;

const appliedSchema = z.array(z.object({ name: z.string(), checksum: z.string() }));

/** The migrations below a folder, `<name>/migration.sql` each, in the order of their names. */
export function readMigrations(folder: string): Migration[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(folder, entry.name, "migration.sql")))
    .map(({ name }) => name)
    .sort()
    .map((name) => {
      const sql = readFileSync(join(folder, name, "migration.sql"), "utf8");
      return { name, sql, checksum: createHash("sha256").update(sql).digest("hex") };
    });
}

/** The migrations that the database has not seen. @throws {MigrationError} when an applied one reads otherwise now. */
export async function pendingMigrations(
  client: Pick<ClientBase, "query">,
  all: readonly Migration[],
): Promise<Migration[]> {
  const table = await client.query("SELECT to_regclass('applied_migration') IS NOT NULL AS present");
  const { present } = z.object({ present: z.boolean() }).parse(table.rows[0]);
  if (!present) return [...all];
  const applied = await appliedMigrations(client);
  const changed = all.find(({ name, checksum }) => (applied.get(name) ?? checksum) !== checksum);
  if (changed !== undefined) {
    throw new MigrationError(
      `Migration ${changed.name} was changed after it had been applied. Restore its file and put the changes into a new migration.`,
    );
  }
  const renamed = new Set(renamedMigrations(applied, all).map(({ name }) => name));
  return all.filter(({ name }) => !applied.has(name) && !renamed.has(name));
}

/** Checksums by name. */
type Applied = ReadonlyMap<string, string>;

async function appliedMigrations(client: Pick<ClientBase, "query">): Promise<Applied> {
  const { rows } = await client.query("SELECT name, checksum FROM applied_migration");
  return new Map(appliedSchema.parse(rows).map(({ name, checksum }) => [name, checksum]));
}

/** Those that were applied under another name, which no file has any more: the same text is the same migration. */
function renamedMigrations(
  applied: Applied,
  all: readonly Migration[],
): { readonly was: string; readonly name: string }[] {
  const names = new Set(all.map(({ name }) => name));
  const formerNames = new Map([...applied].flatMap(([name, checksum]) => (names.has(name) ? [] : [[checksum, name]])));
  return all.flatMap(({ name, checksum }) => {
    const was = applied.has(name) ? undefined : formerNames.get(checksum);
    return was === undefined ? [] : [{ was, name }];
  });
}

/**
 * Brings a database up to date, each migration in a transaction of its own. One that has got another name since it was
 * applied is recorded under it. An advisory lock makes a second start wait
 * and then find nothing to do.
 *
 * @param client a connection that is used for nothing else meanwhile.
 * @returns the names of those applied now.
 */
export async function applyMigrations(client: ClientBase, all: readonly Migration[]): Promise<string[]> {
  await client.query("SELECT pg_advisory_lock($1)", [LOCK]);
  try {
    await client.query(
      `CREATE TABLE IF NOT EXISTS applied_migration (
         name text PRIMARY KEY, checksum text NOT NULL, applied_at timestamptz NOT NULL DEFAULT now())`,
    );
    for (const { was, name } of renamedMigrations(await appliedMigrations(client), all))
      await client.query("UPDATE applied_migration SET name = $2 WHERE name = $1", [was, name]);
    const pending = await pendingMigrations(client, all);
    for (const migration of pending) await apply(client, migration);
    return pending.map(({ name }) => name);
  } finally {
    await client.query("SELECT pg_advisory_unlock($1)", [LOCK]);
  }
}

async function apply(client: ClientBase, { name, sql, checksum }: Migration): Promise<void> {
  await client.query("BEGIN");
  try {
    await client.query(sql);
    await client.query("INSERT INTO applied_migration (name, checksum) VALUES ($1, $2)", [name, checksum]);
    await client.query("COMMIT");
  } catch (error) {
    await client.query("ROLLBACK");
    const why = error instanceof Error ? error.message : String(error);
    throw new MigrationError(`Migration ${name} could not be applied and was rolled back: ${why}`);
  }
}
