import { describe, expect, it } from "vitest";
import { predict, predictStitches } from "@/engine/prediction";
import { patternDocument, swatch, tester } from "../../factories/pattern";

const HALF = 0.5 / Math.sqrt(3);
const TAPE = 0.05 / Math.sqrt(3);

describe("a prediction", () => {
  it("is the design value for a size without a tester", () => {
    // By hand: 2 × 98 ÷ 2 + 2 × 1 = 100 cm; target 90 + 10.
    const [bust, length] = predict({ pattern: patternDocument(), size: "small" }).measurements;
    expect(bust).toMatchObject({
      targetCm: 100,
      designCm: 100,
      workedCm: 100,
      predictedCm: 100,
      standardUncertaintyCm: 0,
    });
    expect(bust).toMatchObject({ acrossCm: 98, alongCm: 0, restCm: 2 });
    expect(length).toMatchObject({ targetCm: null, designCm: 40, acrossCm: 0, alongCm: 40, restCm: 0 });
  });

  it("scatters, for a tester on gauge, by drift and by a tape that is doubled round a girth", () => {
    const [bust, length] = predict({ pattern: patternDocument(), size: "small" }).measurements;
    expect(bust?.spreadCm).toBeCloseTo(Math.hypot(0.025 * 98, 1 / Math.sqrt(3)), 12);
    expect(length?.spreadCm).toBeCloseTo(Math.hypot(0.025 * 40, 0.5 / Math.sqrt(3)), 12);
  });

  it("uses the tester's gauge, and leaves what does not depend on it", () => {
    // By hand: 19 stitches to 10 cm make 196 stitches 103.158 cm; the edgings stay 2 cm.
    const reported = tester({ swatches: [swatch({ stitches: 19 })] });
    const [bust] = predict({ pattern: patternDocument(), size: "small", tester: reported }).measurements;
    expect(bust?.workedCm).toBe(100);
    expect(bust?.predictedCm).toBeCloseTo(1960 / 19 + 2, 12);
  });

  it("uses the counts that were worked, at the pattern's gauge first and then at the tester's", () => {
    const reported = tester({ swatches: [swatch({ stitches: 19 })], worked: { width: 100 } });
    const [bust] = predict({ pattern: patternDocument(), size: "small", tester: reported }).measurements;
    expect(bust).toMatchObject({ designCm: 100, workedCm: 102 });
    expect(bust?.predictedCm).toBeCloseTo(2000 / 19 + 2, 12);
  });

  it("is as uncertain as the swatch's readings: half a stitch and half a millimetre, each rectangular", () => {
    const [bust] = predict({ pattern: patternDocument(), size: "small", tester: tester() }).measurements;
    expect(bust?.standardUncertaintyCm).toBeCloseTo(98 * Math.hypot(HALF / 20, TAPE / 10), 12);
  });

  it("is as uncertain as the spread of testers' gauges, 5 %, in a fabric without a swatch", () => {
    const [bust] = predict({
      pattern: patternDocument(),
      size: "small",
      tester: tester({ swatches: [] }),
    }).measurements;
    expect(bust).toMatchObject({ predictedCm: 100 });
    expect(bust?.standardUncertaintyCm).toBeCloseTo(0.05 * 98, 12);
  });

  it("does not double the tape measure's error for a girth measured around", () => {
    const reported = tester({ readings: [{ measurement: "bust", cm: 100, way: "around" }] });
    const [bust] = predict({ pattern: patternDocument(), size: "small", tester: reported }).measurements;
    expect(bust?.spreadCm).toBeCloseTo(
      Math.hypot(bust?.standardUncertaintyCm ?? 0, 0.025 * 98, 0.5 / Math.sqrt(3)),
      12,
    );
  });

  it("applies settling, and stretch if the term has it", () => {
    const plain = patternDocument();
    const [main] = plain.fabrics;
    const [bust, length] = plain.measurements;
    if (main === undefined || bust === undefined || length === undefined) throw new Error("incomplete pattern");
    const pattern = patternDocument({
      fabrics: [{ ...main, settles: { across: 1.02, along: 0.98 }, wornStretch: { across: 1.1, along: 1 } }],
      measurements: [{ ...bust, terms: [{ times: 2, count: "width", stretched: true }] }, length],
    });
    const [stretched, settled] = predict({ pattern, size: "small" }).measurements;
    expect(stretched?.designCm).toBeCloseTo(98 * 1.02 * 1.1, 12);
    expect(settled?.designCm).toBeCloseTo(40 * 0.98, 12);
  });

  it("splits a diagonal by its derivative, and a diagonal of nothing into nothing", () => {
    // By hand: 3 cm across (6 stitches) and 4 cm along (10 rows) are 5; parts 9/5 and 16/5.
    const plain = patternDocument();
    const [bust] = plain.measurements;
    if (bust === undefined) throw new Error("incomplete pattern");
    const diagonal = { across: [{ times: 1, count: "width" }], along: [{ times: 1, count: "height" }] };
    const pattern = patternDocument({
      measurements: [{ ...bust, terms: [{ times: 1, diagonal }] }],
      grading: { width: { small: 6, large: 0 }, height: { small: 10, large: 0 } },
    });
    const [slope] = predict({ pattern, size: "small" }).measurements;
    expect(slope).toMatchObject({ predictedCm: 5, restCm: 0 });
    expect(slope?.acrossCm).toBeCloseTo(9 / 5, 12);
    expect(slope?.alongCm).toBeCloseTo(16 / 5, 12);
    expect(predict({ pattern, size: "large" }).measurements[0]).toMatchObject({
      predictedCm: 0,
      acrossCm: 0,
      alongCm: 0,
    });
  });

  it("counts the stitches of all copies of a piece, as worked", () => {
    // By hand: 2 × 100 rows × (98 + 98) ÷ 2 = 19 600; with 100 rows of 110: 2 × 100 × 110.
    const pattern = patternDocument({
      yarns: [{ id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 }],
      pieces: [
        {
          id: "panel",
          label: "Panel",
          fabric: "main",
          made: 2,
          yarn: "wool",
          sections: [{ from: "width", to: "width", rows: "height" }],
        },
      ],
    });
    expect(predictStitches({ pattern, size: "small" })).toEqual([{ piece: "panel", stitches: 19_600 }]);
    const reported = tester({ worked: { width: 110 } });
    expect(predictStitches({ pattern, size: "small", tester: reported })).toEqual([
      { piece: "panel", stitches: 22_000 },
    ]);
  });
});
