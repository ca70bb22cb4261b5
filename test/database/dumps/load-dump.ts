import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import type { ClientBase } from "pg";
import { z } from "zod";
import { applyMigrations, readMigrations } from "@/server/migrations";

const dumpSchema = z.object({
  /** The newest migration of the version that made it. */
  newest: z.string(),
  counts: z.record(z.string(), z.number()),
  calls: z.array(
    z.object({
      callId: z.uuid(),
      title: z.string(),
      results: z.object({ analysis: z.unknown(), evidence: z.unknown() }),
    }),
  ),
});

export type Dump = z.infer<typeof dumpSchema>;

/** Filled through the application as it was at commit a2a4e3e, by `populate-dump.ts` of commit 988f563; all invented. */
const PATH = "test/database/dumps/main-0008";

/** What the dump holds, and what its pages of results showed. */
export const dump: Dump = dumpSchema.parse(JSON.parse(readFileSync(`${PATH}.json`, "utf8")));

/** Puts the dump in place of all that stands in a database, and applies every migration since. */
export async function loadDump(client: ClientBase): Promise<void> {
  await client.query("DROP SCHEMA public CASCADE; CREATE SCHEMA public");
  const all = readMigrations("prisma/migrations");
  await applyMigrations(
    client,
    all.filter(({ name }) => name <= dump.newest),
  );
  // As that version named it.
  await client.query("UPDATE applied_migration SET name = '0001_house' WHERE name = '0001_initial'");
  await client.query(gunzipSync(readFileSync(`${PATH}.sql.gz`)).toString());
  await applyMigrations(client, all);
}
