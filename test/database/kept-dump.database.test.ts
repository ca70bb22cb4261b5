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

/**
 * What a later engine calculates otherwise on purpose: which testers settle a cell, the yarn of makers at their own gauge, and
 * on whom a finding rests.
 */
const CALCULATED_OTHERWISE = new Set([
  "testersToSettle",
  "chanceWithThree",
  "expectedMetres",
  "upperMetres",
  "publishMetres",
  "balls",
  "restsOn",
  "chance",
]);

function withoutNewRules(pages: unknown): unknown {
  const json = JSON.stringify(pages, (name, member: unknown) => (CALCULATED_OTHERWISE.has(name) ? undefined : member));
  return JSON.parse(json);
}

/** That readings may be mistakes moves every estimate by a little; a share of the number and, near 0, this much. */
const MOVED_SHARE = 0.05;
const MOVED = 0.02;

/** Where two pages of results differ by more than that, as paths. */
function differing(now: unknown, then: unknown, path = ""): string[] {
  if (typeof now === "number" && typeof then === "number")
    return Math.abs(now - then) <= MOVED + MOVED_SHARE * Math.abs(then) ? [] : [`${path}: ${now}, was ${then}`];
  if (typeof now !== "object" || typeof then !== "object" || now === null || then === null)
    return now === then ? [] : [`${path}: ${String(now)}, was ${String(then)}`];
  const [newer, older] = [Object.entries(now), new Map<string, unknown>(Object.entries(then))];
  const gone = [...older.keys()].filter((name) => !(name in now));
  return [
    ...gone.map((name) => `${path}.${name} is gone`),
    ...newer.flatMap(([name, member]) => differing(member, older.get(name), `${path}.${name}`)),
  ];
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
    expect(counts).toEqual({ ...dump.counts, analysis: 0, plan: 0, grading: 0 });
  });

  it.each(dump.calls)("shows the same results of “$title”", { timeout: 60_000 }, async ({ callId, results }) => {
    const now = await resultsOf(callId);
    expect(now.evidence).toEqual(results.evidence);
    // One that had taken too long is tried again by every later engine.
    if (results.analysis !== "stopped")
      expect(
        differing(withoutNewRules(inOneOrder(now.analysis)), withoutNewRules(inOneOrder(results.analysis))),
      ).toEqual([]);
  });
});
