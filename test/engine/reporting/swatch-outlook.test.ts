import { describe, expect, it } from "vitest";
import { bestTry, swatchOutlook } from "@/engine/reporting";
import { swatch } from "../../factories/pattern";
import { reportContext } from "./report-context";

const outlook = (change: Parameters<typeof swatch>[0], given: Parameters<typeof reportContext>[0] = {}) => {
  const found = swatchOutlook(swatch(change), { context: reportContext(given) });
  if (found === undefined) throw new Error("no such fabric");
  return found;
};

describe("what a swatch would do to the finished size", () => {
  it("gives the tester's gauge over 10 cm and over 4 in", () => {
    // By hand: 20 over 4 in = 20 ÷ 10.16 × 10 = 19.685 over 10 cm.
    const { stitches } = outlook({ acrossCm: 10.16 });
    expect(stitches.over10cm).toBeCloseTo(19.685, 3);
    expect(stitches.over4in).toBeCloseTo(20, 12);
    expect(stitches.statedOver4in).toBeCloseTo(20.32, 12);
  });

  it("asks for nothing on gauge", () => {
    const { measurements, words, worst } = outlook({});
    expect(measurements.map(({ differenceCm }) => differenceCm)).toEqual([0, 0]);
    expect(worst).toBe(0);
    expect(words).toEqual({
      gauge: "You have 20 stitches and 25 rows over 10 cm; the pattern has 20 and 25.",
      garment: "At this gauge every measurement would come out as planned, within its tolerance.",
      advice: null,
      tryToolMm: null,
    });
  });

  it("suggests a smaller hook to a loose tester, one size at a time", () => {
    // By hand: 2 × 98 ÷ 1.8 + 2 = 110.9 cm, 10.9 more than 100; the length is moved by rows alone.
    const { measurements, stitches, rows, words } = outlook({ stitches: 18 });
    expect(measurements[0]).toMatchObject({ measurement: "bust", promisedCm: 100, isBeyondTolerance: true });
    expect(measurements[0]?.differenceCm).toBeCloseTo(10.889, 3);
    expect(measurements[1]).toMatchObject({ measurement: "length", differenceCm: 0, isBeyondTolerance: false });
    expect([stitches.verdict, rows.verdict]).toEqual(["fewer", "as stated"]);
    expect(words.garment).toBe("At this gauge “Bust” would come out 10.9 cm bigger than planned.");
    expect(words.advice).toBe(
      "You work looser than the pattern: fewer stitches to the same width. Try one size smaller: a 3.75 mm hook, and swatch again.",
    );
    expect(words.tryToolMm).toBe(3.75);
  });

  it("suggests larger needles to a tight tester", () => {
    expect(outlook({ stitches: 22, toolMm: 4 }).words.tryToolMm).toBe(4.5);
    expect(outlook({ stitches: 22, toolMm: 25 }).words).toMatchObject({ tryToolMm: null });
  });

  it("says that another needle or hook seldom corrects rows alone", () => {
    // By hand: 100 ÷ 2.3 = 43.5 cm, 3.5 more than 40, with a tolerance of 1.
    const { rows, words } = outlook({ rows: 23 });
    expect(rows.verdict).toBe("fewer");
    expect(words.tryToolMm).toBeNull();
    expect(words.advice).toContain("Another hook size seldom changes that");
    expect(words.garment).toBe("At this gauge “Length” would come out 3.5 cm bigger than planned.");
  });

  it("uses the counts that were worked", () => {
    // By hand: 2 × 88 ÷ 1.8 + 2 = 99.8 cm.
    const found = swatchOutlook(swatch({ stitches: 18 }), {
      context: reportContext(),
      worked: { worked: { width: 88 } },
    });
    expect(found?.measurements[0]?.wouldBeCm).toBeCloseTo(99.778, 3);
    expect(found?.measurements[0]?.isBeyondTolerance).toBe(false);
  });

  it("uses the tester's unit", () => {
    expect(outlook({ acrossCm: 10.16, alongCm: 10.16 }, { unit: "in" }).words.gauge).toBe(
      "You have 20 stitches and 25 rows over 4 in; the pattern has 20.3 and 25.4.",
    );
  });

  it("finds the try that comes nearest, whatever its order", () => {
    const tries = [{ stitches: 18 }, { stitches: 20.25 }, { stitches: 22 }].map((change) => outlook(change));
    expect(bestTry(tries)).toBe(1);
    expect(bestTry([])).toBeNull();
  });

  it("knows nothing of a fabric that the pattern has not", () => {
    expect(swatchOutlook(swatch({ fabric: "lace" }), { context: reportContext() })).toBeUndefined();
  });
});
