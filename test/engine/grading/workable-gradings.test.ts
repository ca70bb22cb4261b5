import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { workFaults, workRules } from "@/engine/garment";
import { gradePattern, nearestFeasible, relaxations } from "@/engine/grading";
import type { Solver } from "@/engine/integer-program";
import { meetsRule, type PatternDocument } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import { highsSolver } from "@/solver/highs-solver";
import { GARMENTS } from "../../garments";
import { castOn, ends, madeGarment, n } from "../../garments/made-garment";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

/** By hand: from 81 to 67 stitches, two at a time in every other row, are 7 decreases in 14 rows. */
const sleeve = (change: { top: number; cuff: number; rows: number }): PatternDocument => {
  const made = madeGarment({
    name: "Sleeve",
    bust: [80, 90, 100],
    counts: {
      top: ["stitches", 81, 81, 81],
      cuff: ["stitches", 67, 67, 67],
      rows: ["rows", 60, 60, 60],
    },
    pieces: [{ id: "sleeve", label: "Sleeve" }],
    steps: [
      [
        "sleeve",
        castOn(n("top")),
        {
          ...{ do: "section", from: n("top"), to: n("cuff"), rows: n("rows") },
          shaping: { stitches: 1, edges: "both", everyOther: true },
        },
        ends("cuff"),
      ],
    ],
    measurements: [
      { label: "Upper arm", terms: [[1, "top"]] },
      { label: "Cuff", terms: [[1, "cuff"]] },
      { label: "Length", terms: [[1, "rows"]] },
    ],
  });
  const stitches = [change.top, change.cuff, change.rows];
  const cmOf = [0.5, 0.5, 0.4];
  return {
    ...made,
    measurements: made.measurements.map((measurement, index) => ({
      ...measurement,
      target: {
        cm: Object.fromEntries(made.sizes.map(({ id }) => [id, (stitches[index] ?? 0) * (cmOf[index] ?? 0)])),
      },
    })),
  };
};

describe("the shaping of a garment", () => {
  it("is a rule of grading: 81 to 66 stitches, two at a time, come out as an even difference", () => {
    const outcome = gradePattern({ pattern: sleeve({ top: 81, cuff: 66, rows: 60 }) }, solver);
    if (outcome.status !== "optimal") throw new Error(outcome.status);
    expect(outcome.unworkable).toBeUndefined();
    for (const size of ["small", "medium", "large"]) {
      const [top = 0, cuff = 0] = [outcome.grading["top"]?.[size], outcome.grading["cuff"]?.[size]];
      expect((top - cuff) % 2).toBe(0);
      // One stitch is half a tolerance, and either count may give way.
      expect(Math.abs(top - 81) + Math.abs(cuff - 66)).toBe(1);
    }
  });

  it("is named where it clashes with numbers that are locked", () => {
    const pattern = sleeve({ top: 81, cuff: 66, rows: 60 });
    const locked = {
      ...pattern,
      counts: pattern.counts.map((count) => {
        const number = { top: 81, cuff: 66 }[count.id];
        return number === undefined ? count : { ...count, locked: { small: number } };
      }),
    };
    const outcome = gradePattern({ pattern: locked }, solver);
    if (outcome.status !== "infeasible") throw new Error(outcome.status);
    expect(outcome.clash.map(({ rule }) => rule).toSorted()).toEqual(["locked", "locked", "work"]);
    expect(outcome.clash.find(({ rule }) => rule === "work")).toMatchObject({
      step: "s2",
      size: "small",
      says: "Sleeve: from “top” to “cuff” stitches, 2 go at a time and must come out, in S.",
    });
    expect(relaxations(locked, outcome.clash, solver).every(({ helps }) => helps)).toBe(true);
  });

  it("leaves a number typed by hand only what its rows have room for", () => {
    // Seven decreases at both edges in every other row take 14 rows.
    const pattern = sleeve({ top: 81, cuff: 67, rows: 60 });
    expect(nearestFeasible(pattern, { count: "rows", size: "small", typed: 9 })).toEqual({ below: null, above: 14 });
    // From 67 stitches an even difference leads to an odd number only.
    expect(nearestFeasible(pattern, { count: "top", size: "small", typed: 80 })).toEqual({ below: 79, above: 81 });
  });
});

describe("gradings of invented garments", () => {
  it.each(Object.entries(GARMENTS))(
    "can be worked, with targets about what a %s measures",
    (_name, garment) => {
      const measurements = finishedMeasurements(garment).map(({ measurement, sizes }, index) => {
        const offCm = (((index * 7) % 9) - 4) / 4;
        const cm = sizes.map(({ size, designCm }) => [size, Math.max(1, (designCm ?? 0) + offCm)]);
        return { ...measurement, target: { cm: Object.fromEntries(cm) as Record<string, number> } };
      });
      const pattern = { ...garment, measurements };
      const outcome = gradePattern({ pattern }, solver);
      if (outcome.status !== "optimal") throw new Error(JSON.stringify(outcome));
      const graded = { ...pattern, grading: outcome.grading };
      expect(outcome.grading).not.toEqual(garment.grading);
      expect(workRules(graded).filter((rule) => !meetsRule(graded, rule))).toEqual([]);
      expect(workFaults(graded)).toEqual([]);
    },
    120_000,
  );

  it("break a rule only where a step or a seam cannot be worked", () => {
    let broken = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.values(GARMENTS)),
        fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 120, maxLength: 120 }),
        (garment, off) => {
          let cell = 0;
          const grading = Object.fromEntries(
            Object.entries(garment.grading ?? {}).map(([count, numbers]) => [
              count,
              Object.fromEntries(
                Object.entries(numbers).map(([size, number]) => {
                  const change = cell % 6 === 0 ? (off[cell] ?? 0) : 0;
                  cell += 1;
                  return [size, Math.max(1, number + change)];
                }),
              ),
            ]),
          );
          const pattern = { ...garment, grading };
          const faulty = new Set(workFaults(pattern).map(({ size }) => size));
          for (const rule of workRules(pattern).filter((one) => !meetsRule(pattern, one))) {
            expect(faulty).toContain(pattern.sizes[rule.size]?.id);
            broken += 1;
          }
        },
      ),
      { numRuns: 100, seed: 20_261_202 },
    );
    expect(broken).toBeGreaterThan(50);
  });
});
