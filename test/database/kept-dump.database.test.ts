import { Client } from "pg";
import { beforeAll, describe, expect, it } from "vitest";
import { environment } from "@/server/environment";
import { dump, loadDump } from "./dumps/load-dump";
import { resultsOf } from "./dumps/results-of";

const counts: Record<string, number> = {};

beforeAll(async () => {
  const client = new Client({ connectionString: environment().DATABASE_URL });
  await client.connect();
  await loadDump(client);
  for (const table of Object.keys(dump.counts)) {
    const { rows } = await client.query<{ count: number }>(`SELECT count(*)::int AS count FROM "${table}"`);
    counts[table] = rows[0]?.count ?? 0;
  }
  await client.end();
});

describe("a database that an earlier version filled", () => {
  it("has all its rows after every later migration", () => {
    expect(Object.keys(counts).length).toBeGreaterThan(25);
    expect(counts).toEqual(dump.counts);
  });

  it.each(dump.calls)("shows the same results of “$title”", { timeout: 60_000 }, async ({ callId, results }) => {
    expect(await resultsOf(callId)).toEqual(results);
  });
});
