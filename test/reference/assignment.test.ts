import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { minCostAssignment, chanceOfFinishers, invitationsFor } from "@/engine/places";
import { readJson } from "./read-json";

const smallSchema = z.object({
  problems: z.array(
    z.object({
      id: z.string(),
      cost: z.array(z.array(z.number())),
      supply: z.array(z.number()).optional(),
      demand: z.array(z.number()).optional(),
      published_optimum: z.number(),
    }),
  ),
});

/** Least total cost, each unit of supply a row of its own; every place is filled where supply suffices. */
function minTotalCost(
  cost: readonly (readonly number[])[],
  supply: readonly number[],
  demand: readonly number[],
): number {
  const rows = cost.flatMap((row, index) => Array.from({ length: supply[index] ?? 1 }, () => row));
  const sizes = (cost[0] ?? []).map((_, size) => ({ min: 0, capacity: demand[size] ?? 1 }));
  const assigned = minCostAssignment({ sizes, costs: Float64Array.from(rows.flat()), slack: 0 });
  const placed = [...assigned].filter((size) => size >= 0).length;
  expect(placed).toBe(
    Math.min(
      rows.length,
      sizes.reduce((sum, { capacity }) => sum + capacity, 0),
    ),
  );
  return rows.reduce((sum, row, index) => sum + (row[assigned[index] ?? -1] ?? 0), 0);
}

// Data and optima: docs/references.md; each optimum confirmed there by R (clue, lpSolve).
describe("the assignment solver, against published optima", () => {
  it.each(readJson("assignment_small.json", smallSchema).problems)("$id", ({ cost, supply, demand, ...problem }) => {
    expect(minTotalCost(cost, supply ?? [], demand ?? [])).toBe(problem.published_optimum);
  });

  it("OR-Library assign100: 100 × 100, optimum 305 (Beasley 1990)", () => {
    const text = readFileSync(new URL("data/orlib_assign100.txt", import.meta.url), "utf8");
    const [n = 0, ...costs] = text.trim().split(/\s+/).map(Number);
    expect([n, costs.length]).toEqual([100, 10_000]);
    const rows = Array.from({ length: n }, (_, row) => costs.slice(row * n, (row + 1) * n));
    expect(minTotalCost(rows, [], [])).toBe(305);
  }, 60_000);
});

describe("how many to invite, by the binomial distribution", () => {
  it("3 of 5 finish with a chance of 0.83692, 3 of 4 with 0.6517, where 3 in 10 drop out", () => {
    // By hand: 10·0.7³·0.3² + 5·0.7⁴·0.3 + 0.7⁵ = 0.3087 + 0.36015 + 0.16807; 4·0.7³·0.3 + 0.7⁴ = 0.4116 + 0.2401.
    expect(chanceOfFinishers({ invited: 5, finishers: 3, loss: 0.3 })).toBeCloseTo(0.83692, 12);
    expect(chanceOfFinishers({ invited: 4, finishers: 3, loss: 0.3 })).toBeCloseTo(0.6517, 12);
    expect(invitationsFor({ finishers: 3, loss: 0.3, chance: 0.8 })).toBe(5);
  });
});
