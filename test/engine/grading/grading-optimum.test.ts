import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { glpkSolver } from "@/cli/bench/glpk-solver";
import { benchGarment } from "@/cli/bench/bench-garment";
import { gradePattern } from "@/engine/grading";
import type { Solver } from "@/engine/integer-program";
import { highsSolver } from "@/solver/highs-solver";
import { documentOf, MOST, smallPatterns, tryAll, type Objective, type Small } from "./small-patterns";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

const ROUNDING = 1e-6;
const RUNS = 1000;

const smallPattern = smallPatterns([1, 2], [1, 3], [1, 4], [2, 1], [2, 2], [3, 1]);

function bestByTrying(small: Small): Objective | null {
  let best: Objective | null = null;
  tryAll(small, (objective) => {
    if (best === null || isLess(objective, best)) best = objective;
  });
  return best;
}

function isLess(left: Objective, right: Objective): boolean {
  for (const [index, value] of left.entries()) {
    const difference = value - (right[index] ?? 0);
    if (Math.abs(difference) > ROUNDING) return difference < 0;
  }
  return false;
}

describe("the grading that is found", () => {
  it("is as good as the best of all gradings of small patterns, tried one by one", () => {
    const ran = { equal: 0, noneFound: 0, beyondReach: 0 };
    fc.assert(
      fc.property(smallPattern, (small) => {
        const outcome = gradePattern({ pattern: documentOf(small), slack: small.slack }, solver);
        const best = bestByTrying(small);
        if (outcome.status === "infeasible") {
          expect(best).toBeNull();
          ran.noneFound += 1;
          return;
        }
        if (outcome.status !== "optimal") throw new Error(JSON.stringify(outcome));
        const { beyond, deviation, unevenness, sum } = outcome.objective;
        const found: Objective = [beyond, deviation, unevenness, sum];
        if (Object.values(outcome.grading).some((bySize) => Object.values(bySize).some((number) => number > MOST))) {
          if (best !== null) expect(isLess(best, found)).toBe(false);
          ran.beyondReach += 1;
          return;
        }
        expect(best).not.toBeNull();
        best?.forEach((value, index) => expect(found[index]).toBeCloseTo(value, 6));
        ran.equal += 1;
      }),
      { numRuns: RUNS, seed: 20_261_125 },
    );
    expect(ran.equal + ran.noneFound + ran.beyondReach).toBe(RUNS);
    expect(ran.equal).toBeGreaterThan(RUNS / 2);
    expect(ran.noneFound).toBeGreaterThan(0);
  }, 120_000);

  it.each([0, 0.25])(
    "is as good as GLPK's on a garment of several groups, with slack %s",
    async (slack) => {
      const pattern = benchGarment({ sizes: 4, groups: 3 });
      const ours = gradePattern({ pattern, slack }, solver);
      const theirs = gradePattern({ pattern, slack }, await glpkSolver(20));
      expect(ours.status).toBe("optimal");
      if (ours.status !== "optimal" || theirs.status !== "optimal")
        throw new Error("a solver did not come to its proof");
      for (const stage of ["beyond", "deviation", "unevenness", "sum"] as const)
        expect(ours.objective[stage]).toBeCloseTo(theirs.objective[stage], 6);
    },
    60_000,
  );
});
