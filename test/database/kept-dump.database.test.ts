import { Client } from "pg";
import { beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { canonicalJson } from "@/engine/pattern";
import { environment } from "@/server/environment";
import { dump, loadDump } from "./dumps/load-dump";
import { resultsOf } from "./dumps/results-of";

/** What testers say of the fit, whichever way it is sorted. */
function inOneOrder(pages: unknown) {
  const { fit, ...rest } = z.looseObject({ fit: z.array(z.unknown()) }).parse(pages);
  return { ...rest, fit: fit.map((answer) => canonicalJson(answer)).toSorted() };
}

/** What a later engine calculates otherwise on purpose: which testers settle a cell, and the yarn of makers at their own gauge. */
const CALCULATED_OTHERWISE = new Set(["testersToSettle", "chanceWithThree", "upperMetres", "publishMetres", "balls"]);

function withoutNewRules(pages: unknown): unknown {
  const json = JSON.stringify(pages, (name, member: unknown) => (CALCULATED_OTHERWISE.has(name) ? undefined : member));
  return JSON.parse(json);
}

/** Tables that a later migration gave another name. */
const RENAMED: Readonly<Record<string, string>> = { late_save: "conflicting_draft", opening: "listing" };

const counts: Record<string, number> = {};

beforeAll(async () => {
  const client = new Client({ connectionString: environment().DATABASE_URL });
  await client.connect();
  await loadDump(client);
  for (const table of Object.keys(dump.counts)) {
    const { rows } = await client.query<{ count: number }>(
      `SELECT count(*)::int AS count FROM "${RENAMED[table] ?? table}"`,
    );
    counts[table] = rows[0]?.count ?? 0;
  }
  await client.end();
});

describe("a database that an earlier version filled", () => {
  it("has all its rows after every later migration, but what is calculated again", () => {
    expect(Object.keys(counts).length).toBeGreaterThan(25);
    expect(counts).toEqual({ ...dump.counts, analysis: 0, plan: 0 });
  });

  it.each(dump.calls)("shows the same results of “$title”", { timeout: 60_000 }, async ({ callId, results }) => {
    const now = await resultsOf(callId);
    expect(now.evidence).toEqual(results.evidence);
    // One that had taken too long is tried again by every later engine.
    if (results.analysis !== "stopped")
      expect(withoutNewRules(inOneOrder(now.analysis))).toEqual(withoutNewRules(inOneOrder(results.analysis)));
  });
});
