import { expect, it } from "vitest";
import { benchGarment } from "@/cli/bench/bench-garment";
import { gradePattern } from "@/engine/grading";
import { gradingWarnings } from "@/engine/pattern";
import { highsSolver } from "@/solver/highs-solver";

it("is returned as the best so far, with the stage and its bound, if the solver stops at its node limit", async () => {
  const garment = benchGarment({ sizes: 12, groups: 5 });
  // One target over counts of all groups makes them one of twenty counts: too many for anything but the solver.
  const [first] = garment.measurements;
  if (first === undefined) throw new Error("the garment has measurements");
  const terms = [0, 1, 2, 3, 4].map((group) => ({ times: 1, count: `side-${group}` }));
  const all = { ...first, id: "all", terms, target: { body: "bust", easeCm: 7 } };
  const pattern = { ...garment, measurements: [...garment.measurements, all] };
  const outcome = gradePattern({ pattern }, await highsSolver({ maxNodes: 1 }));
  if (outcome.status !== "limit") throw new Error(outcome.status);
  const [limit] = outcome.bound ?? [];
  expect(limit?.stage).toBe("deviation");
  expect(limit?.counts).toHaveLength(20);
  expect(limit?.value).toBeCloseTo(outcome.objective.deviation, 6);
  expect(limit?.bound).toBeLessThan(outcome.objective.deviation);
  expect(limit?.bound).toBeGreaterThan(0);
  expect(gradingWarnings({ ...pattern, grading: outcome.grading })).toEqual([]);
}, 120_000);
