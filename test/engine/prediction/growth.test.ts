import { describe, expect, it } from "vitest";
import { gapReadings } from "@/engine/gaps";
import { fabricGrowths, predict, swatchGrowth } from "@/engine/prediction";
import type { PatternDocument, Tester } from "@/engine/pattern";
import { callDocument } from "../../factories/call";
import { patternDocument, swatch, tester } from "../../factories/pattern";

const BEFORE = { stitches: 20, acrossCm: 10, rows: 26.5, alongCm: 10 };

/** The simple pattern, whose length is worked until it measures 38 cm. */
function untilItMeasures(length: Partial<NonNullable<PatternDocument["lengths"]>[number]> = {}): PatternDocument {
  const pattern = patternDocument({ lengths: [{ id: "body", label: "Body", cm: 38, ...length }] });
  return {
    ...pattern,
    measurements: pattern.measurements.map((measurement) =>
      measurement.id === "length" ? { ...measurement, terms: [{ times: 1, length: "body" }] } : measurement,
    ),
  };
}

function lengthOf(pattern: PatternDocument, one?: Tester) {
  const { measurements } = predict({ pattern, size: "small", ...(one ? { tester: one } : {}) });
  return measurements.find(({ measurement }) => measurement === "length");
}

describe("a length that is worked until it measures so much", () => {
  const grown = tester({ swatches: [swatch({ before: BEFORE })] });

  it("stays as it is where it is measured after blocking, or where nothing is said", () => {
    expect(lengthOf(untilItMeasures(), grown)?.predictedCm).toBe(38);
    expect(lengthOf(untilItMeasures({ measured: "blocked" }), grown)?.predictedCm).toBe(38);
  });

  it("grows as the tester's swatch did where it is measured while working", () => {
    // By hand: 26.5 rows before are 25 after, so 10 cm become 10.6.
    const found = lengthOf(untilItMeasures({ measured: "working" }), grown);
    expect(found).toMatchObject({ designCm: 38, workedCm: 38 });
    expect(found?.predictedCm).toBeCloseTo(38 * 1.06, 12);
    expect(found?.restCm).toBe(found?.predictedCm);
    expect(found?.standardUncertaintyCm).toBeGreaterThan(0);
  });

  it("grows as the pattern says where no swatch was counted before blocking", () => {
    const pattern = untilItMeasures({ measured: "working", growth: 1.05 });
    expect(lengthOf(pattern)?.designCm).toBeCloseTo(39.9, 12);
    expect(lengthOf(pattern, tester())?.predictedCm).toBeCloseTo(39.9, 12);
  });

  it("stays as it is where the garment was not blocked", () => {
    expect(lengthOf(untilItMeasures({ measured: "working" }), { ...grown, blocking: "none" })?.predictedCm).toBe(38);
  });

  it("is expected of a tester who did not count before as of those who did, and known less well", () => {
    const pattern = untilItMeasures({ measured: "working" });
    const other = tester({ id: "t1", readings: [{ measurement: "length", cm: 40.28 }] });
    const { testers } = gapReadings(callDocument([grown, other], { pattern }));
    const [gap] = testers[0]?.gaps ?? [];
    expect(gap?.gapCm).toBeCloseTo(40.28 - 38 * 1.06, 12);
    expect(testers[0]?.block.effects).toHaveLength(1);
    expect(fabricGrowths({ pattern, testers: [grown, other] }).get("main")?.sdAlong).toBeGreaterThan(
      swatchGrowth(swatch({ before: BEFORE }))?.sdAlong ?? 1,
    );
  });
});

it("does not believe a swatch that doubles when it is blocked", () => {
  expect(swatchGrowth(swatch({ before: { ...BEFORE, rows: 50 } }))).toBeNull();
});

it("knows the gauge of a garment less well that was blocked otherwise than its swatch", () => {
  const bust = (one: Tester) =>
    predict({ pattern: patternDocument(), size: "small", tester: one }).measurements[0]?.standardUncertaintyCm ?? 0;
  const wet = [swatch({ blocking: "wet" })];
  expect(bust(tester({ swatches: wet, blocking: "wet" }))).toBe(bust(tester({ swatches: [swatch()] })));
  expect(bust(tester({ swatches: wet, blocking: "steamed" }))).toBeGreaterThan(
    2 * bust(tester({ swatches: wet, blocking: "wet" })),
  );
});
