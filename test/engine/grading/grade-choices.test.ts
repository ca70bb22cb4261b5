import { describe, expect, it } from "vitest";
import { benchGarment } from "@/cli/bench/bench-garment";
import { gradeChoices, gradedMeasurements, gradeFrontier } from "@/engine/grading";
import { highsSolver } from "@/solver/highs-solver";

describe("the gradings to choose from", () => {
  it("are the best trade-offs, each with how far in tolerances its furthest measurement is from the target", async () => {
    const pattern = benchGarment({ sizes: 8, groups: 2 });
    const solver = await highsSolver();
    const found = gradeChoices(pattern, solver);
    const frontier = gradeFrontier(pattern, solver);
    if (found.status !== "graded" || frontier.status !== "optimal") throw new Error(found.status);
    expect(found.choices.length).toBeGreaterThan(2);
    expect(found.choices.map(({ furthest: _, ...choice }) => choice)).toEqual(frontier.frontier);
    for (const { grading, furthest } of found.choices) {
      const deviations = gradedMeasurements({ ...pattern, grading }).map(({ deviation }) => Math.abs(deviation ?? 0));
      expect(furthest).toBe(Math.max(...deviations));
    }
  });

  it("have no furthest where nothing has a target", async () => {
    const { measurements, ...pattern } = benchGarment({ sizes: 3, groups: 1 });
    const free = { ...pattern, measurements: measurements.map(({ target: _, ...measurement }) => measurement) };
    const counts = pattern.counts.map(({ id }) => [id, Object.fromEntries(pattern.sizes.map((size) => [size.id, 80]))]);
    const found = gradeChoices({ ...free, grading: Object.fromEntries(counts) }, await highsSolver());
    expect(found).toMatchObject({ status: "graded", choices: [{ furthest: null }] });
  });
});
