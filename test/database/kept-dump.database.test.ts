import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { Client } from "pg";
import { beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { canonicalJson } from "@/engine/pattern";
import { environment } from "@/server/environment";
import { applyMigrations, readMigrations } from "@/server/migrations";
import { resultsOf } from "./dumps/results-of";

const keptSchema = z.object({
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

/** Made by commit a2a4e3e, whose newest migration was 0008; see `dumps/populate-dump.ts`. */
const NAME = "main-0008";
const kept = keptSchema.parse(JSON.parse(readFileSync(`test/database/dumps/${NAME}.json`, "utf8")));

/** What testers say of the fit, whichever way it is sorted. */
function inOneOrder(pages: unknown) {
  const { fit, ...rest } = z.looseObject({ fit: z.array(z.unknown()) }).parse(pages);
  return { ...rest, fit: fit.map((answer) => canonicalJson(answer)).toSorted() };
}

const counts: Record<string, number> = {};

beforeAll(async () => {
  const client = new Client({ connectionString: environment().DATABASE_URL });
  await client.connect();
  await client.query("DROP SCHEMA public CASCADE; CREATE SCHEMA public");
  const all = readMigrations("prisma/migrations");
  await applyMigrations(
    client,
    all.filter(({ name }) => name <= kept.newest),
  );
  await client.query(gunzipSync(readFileSync(`test/database/dumps/${NAME}.sql.gz`)).toString());
  await applyMigrations(client, all);
  for (const table of Object.keys(kept.counts)) {
    const { rows } = await client.query<{ count: number }>(`SELECT count(*)::int AS count FROM "${table}"`);
    counts[table] = rows[0]?.count ?? 0;
  }
  await client.end();
});

describe("a database that an earlier version filled", () => {
  it("has all its rows after every later migration, but what is calculated again", () => {
    expect(Object.keys(counts).length).toBeGreaterThan(25);
    expect(counts).toEqual({ ...kept.counts, analysis: 0, plan: 0 });
  });

  it.each(kept.calls)("shows the same results of “$title”", { timeout: 60_000 }, async ({ callId, results }) => {
    const now = await resultsOf(callId);
    expect(now.evidence).toEqual(results.evidence);
    // One that had taken too long is tried again by every later engine.
    if (results.analysis !== "stopped") expect(inOneOrder(now.analysis)).toEqual(inOneOrder(results.analysis));
  });
});
