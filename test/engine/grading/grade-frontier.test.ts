import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { benchGarment } from "@/cli/bench/bench-garment";
import { frontierByProgram, gradeFrontier, gradePattern, groupFrontier, type FrontierOutcome } from "@/engine/grading";
import type { Solver } from "@/engine/integer-program";
import { highsSolver } from "@/solver/highs-solver";
import { patternDocument } from "../../factories/pattern";
import { documentOf, MOST, smallPatterns, tryAll, type Small } from "./small-patterns";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

type Point = readonly [deviation: number, unevenness: number];

/** Of all gradings that exceed tolerances least, those that no other beats, nearest first. */
function bestByTrying(small: Small): Point[] {
  let leastBeyond = Number.POSITIVE_INFINITY;
  let nearest = new Map<number, number>();
  tryAll({ ...small, slack: 0 }, ([beyond, deviation, unevenness]) => {
    if (beyond > leastBeyond + 1e-9) return;
    if (beyond < leastBeyond - 1e-9) nearest = new Map();
    leastBeyond = Math.min(leastBeyond, beyond);
    nearest.set(unevenness, Math.min(deviation, nearest.get(unevenness) ?? Number.POSITIVE_INFINITY));
  });
  const points = [...nearest].map(([unevenness, deviation]): Point => [deviation, unevenness]);
  return points
    .filter((point) => !points.some((other) => other[1] < point[1] && other[0] <= point[0] + 1e-9))
    .filter((point) => !points.some((other) => other[1] === point[1] && other[0] < point[0] - 1e-9))
    .toSorted((one, other) => one[0] - other[0]);
}

const pointsOf = (found: FrontierOutcome): Point[] =>
  found.status === "optimal" ? found.frontier.map(({ deviation, unevenness }) => [deviation, unevenness]) : [];

function expectSame(found: readonly Point[], wanted: readonly Point[]): void {
  expect(found.map(([, unevenness]) => unevenness)).toEqual(wanted.map(([, unevenness]) => unevenness));
  for (const [index, [deviation]] of wanted.entries()) expect(found[index]?.[0]).toBeCloseTo(deviation, 6);
}

describe("the trade-offs between close to the targets and even steps", () => {
  it("are all that none beats, of all gradings of small patterns tried one by one", () => {
    const lengths: number[] = [];
    fc.assert(
      fc.property(smallPatterns([1, 3], [1, 4], [2, 2]), (small) => {
        const found = gradeFrontier(documentOf(small), solver);
        const wanted = bestByTrying(small);
        if (found.status === "infeasible") {
          expect(wanted).toEqual([]);
          return;
        }
        if (found.status !== "optimal") throw new Error(JSON.stringify(found));
        const numbers = found.frontier.flatMap(({ grading }) => Object.values(grading).flatMap(Object.values));
        if (numbers.some((number) => number > MOST)) return;
        expectSame(pointsOf(found), wanted);
        lengths.push(wanted.length);
      }),
      { numRuns: 300, seed: 20_261_130 },
    );
    expect(lengths.length).toBeGreaterThan(150);
    expect(lengths.filter((length) => length > 1).length).toBeGreaterThan(20);
  }, 120_000);

  it("are those of an integer program that allows one less of unevenness each time", () => {
    const pattern = benchGarment({ sizes: 5, groups: 1 });
    const request = { pattern, counts: pattern.counts, measurements: pattern.measurements, slack: 0 };
    const bySize = groupFrontier(request, solver);
    const byProgram = frontierByProgram(request, solver);
    if (bySize.status !== "optimal" || byProgram.status !== "optimal") throw new Error("no proof");
    expect(bySize.tradeOffs.length).toBeGreaterThan(2);
    expectSame(
      bySize.tradeOffs.map(({ deviation, unevenness }) => [deviation, unevenness]),
      byProgram.tradeOffs.map(({ deviation, unevenness }) => [deviation, unevenness]),
    );
  }, 120_000);

  it("begin with the grading that is closest to the targets", () => {
    const pattern = benchGarment({ sizes: 6, groups: 3 });
    const closest = gradePattern({ pattern }, solver);
    const found = gradeFrontier(pattern, solver);
    if (closest.status !== "optimal" || found.status !== "optimal") throw new Error("no proof");
    expect(found.frontier[0]?.deviation).toBeCloseTo(closest.objective.deviation, 6);
    expect(found.frontier[0]?.unevenness).toBe(closest.objective.unevenness);
    for (const [index, { deviation, unevenness }] of found.frontier.entries()) {
      const next = found.frontier[index + 1];
      if (next === undefined) continue;
      expect(next.deviation).toBeGreaterThan(deviation);
      expect(next.unevenness).toBeLessThan(unevenness);
    }
  });

  it("name the clash where rules leave no grading, and a count that has no target", () => {
    const base = patternDocument();
    const [width, height] = base.counts;
    if (width === undefined || height === undefined) throw new Error("the test pattern has two counts");
    const clashing = patternDocument({
      counts: [{ ...width, repeat: { of: 7, plus: 0 }, locked: { small: 99 } }, height],
    });
    expect(gradeFrontier(clashing, solver).status).toBe("infeasible");
    const untargeted = patternDocument({ measurements: [], grading: undefined });
    expect(gradeFrontier(untargeted, solver)).toMatchObject({
      status: "optimal",
      missing: [{ path: "counts[0]" }, { path: "counts[1]" }],
    });
  });
});
