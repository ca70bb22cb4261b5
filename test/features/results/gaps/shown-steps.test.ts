import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromCm } from "../../../../src/engine/units";
import { shownSteps } from "../../../../src/features/results/gaps/shown-steps";
import { shownStep } from "../../../../src/ui/format-length";

const step = {
  tester: "t1",
  measurement: "bust",
  targetCm: 100,
  designCm: 100.46,
  workedStepCm: 0,
  gaugeStepCm: 1.44,
  gapCm: 2.1,
  readingCm: 104,
};

describe("the steps as shown", () => {
  it("add up, the one with the largest remainder rounded up", () => {
    // By hand: 100 + 0.46 + 1.44 + 2.1 = 104; in tenths 1000 + 4 + 14 + 21 = 1039, and 0.46 has the largest remainder.
    const shown = shownSteps(step, "cm");
    expect(shown.map(({ kind }) => kind)).toEqual(["target", "rounding", "gauge", "gap", "reading"]);
    expect(shown.map(({ cm }) => Number(cm.toFixed(1)))).toEqual([100, 0.5, 1.4, 2.1, 104]);
  });

  it("begin at the design where there is no target", () => {
    expect(shownSteps({ ...step, targetCm: null }, "cm").map(({ kind }) => kind)).toEqual([
      "design",
      "gauge",
      "gap",
      "reading",
    ]);
  });

  it.each(["cm", "in"] as const)("end at the reading rounded to what is shown, in %s", (unit) => {
    let cases = 0;
    const change = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 150, noNaN: true }),
        change,
        change,
        change,
        (design, worked, gauge, gap) => {
          cases += 1;
          const readingCm = design + worked + gauge + gap;
          const shown = shownSteps(
            {
              ...step,
              targetCm: null,
              designCm: design,
              workedStepCm: worked,
              gaugeStepCm: gauge,
              gapCm: gap,
              readingCm,
            },
            unit,
          );
          const off = fromCm((shown.at(-1)?.cm ?? 0) - readingCm, unit) / shownStep(unit);
          expect(Math.abs(off)).toBeLessThan(0.5 + 1e-6);
        },
      ),
    );
    expect(cases).toBeGreaterThanOrEqual(100);
  });
});
