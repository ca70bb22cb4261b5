import { describe, expect, it } from "vitest";
import type { Tester } from "../../../../src/engine/pattern";
import { methodExample, plainAverage } from "../../../../src/features/results/method/method-example";
import { spreads, verdictTally } from "../../../../src/features/results/method/spreads";
import { stepsCsv } from "../../../../src/features/results/gaps/steps-csv";
import { outlierSentence } from "../../../../src/features/results/mistakes/outlier-copy";
import { callDocument, reader } from "../../../factories/call";
import { swatch } from "../../../factories/pattern";
import { resultsOf } from "../../../factories/results";

function analysisOf(testers: readonly Tester[]) {
  return resultsOf(callDocument(testers), { t0: "=Alva" });
}

/** Two of the small size: one a tenth tighter than stated, one on gauge. By design bust is 2 × (98 ÷ 2 + 1) = 100. */
const two = analysisOf([
  reader("t0", { bust: 92 }, { swatches: [swatch({ stitches: 22 })] }),
  reader("t1", { bust: 101, length: 41 }),
]);

describe("how results are calculated, with a call's own numbers", { timeout: 60_000 }, () => {
  it("follows the reading whose gauge explains most beside a difference", () => {
    const example = methodExample(two);
    expect(example?.name).toBe("=Alva");
    // By hand: 98 stitches at 22 to 10 cm are 98 ÷ 2.2 = 44.5455 cm, twice, and twice the edging of 1 cm.
    expect(example?.prediction.predictedCm).toBeCloseTo(2 * 44.545_454_5 + 2, 6);
    expect(example?.explanation.designCm).toBeCloseTo(100, 10);
    const step = example?.step;
    if (step === undefined) throw new Error("no step");
    expect(step.designCm + step.workedStepCm + step.gaugeStepCm + step.gapCm).toBeCloseTo(92, 10);
    expect(methodExample(analysisOf([reader("t0", { bust: 92 }, { swatches: [] })]))).toBeNull();
  });

  it("shows a plain average misled by a tester who works tightly", () => {
    const average = plainAverage(two);
    // By hand: measured less designed −8 and 1, their mean −3.5; less predicted 92 − 91.0909 = 0.9091 and 1, 0.9545.
    expect(average?.measurement.id).toBe("bust");
    expect(average?.crudeCm).toBeCloseTo(-3.5, 10);
    expect(average?.gaugedCm).toBeCloseTo(0.954_545, 5);
    expect(average?.estimateCm).toBe(two.differences.cells[0]?.gapCm);
    expect(plainAverage(analysisOf([reader("t0", { bust: 92 })]))).toBeNull();
  });

  it("counts every reading by whether and why it is excluded", () => {
    const analysis = analysisOf([
      reader("t0", { bust: 100, length: 40 }, { changed: ["length"] }),
      reader("t1", { bust: 50 }),
      { ...reader("t2", {}), readings: [{ measurement: "bust", cm: 100, state: "unwashed" }] },
      { ...reader("t3", {}), readings: [{ measurement: "bust", cm: 101, decision: "set-aside" }] },
      { ...reader("t4", {}), readings: [{ measurement: "bust", cm: 102, state: "unwashed", decision: "keep" }] },
    ]);
    expect(analysis.method.readings).toEqual({
      all: 6,
      counted: 2,
      left: { changed: 1, unwashed: 1, "set-aside": 1, slip: 1 },
    });
    const slip = analysis.method.suspects.find(({ tester }) => tester === "t1");
    if (slip === undefined) throw new Error("no slip");
    expect(outlierSentence(slip, analysis, "cm")).toBe(
      "t1, A Bust: 50.0 cm looks like half the girth (measured flat and not doubled), and would be 100.0 cm. It does not count.",
    );
  });

  it("gives spreads as lengths at the smallest and the largest tolerance, drifts in per cent", () => {
    const variances = { offset: 0.25, step: 0.04, cell: null, driftAcross: 0.0004, driftAlong: 0.0001, residual: 1 };
    const told = spreads(variances, two.pattern, "cm");
    // By hand: √0.25 is half a tolerance, of 1 and of 2 cm; √0.0004 is 2 %.
    expect(told.map(({ words }) => words)).toEqual([
      "0.50 to 1.00 cm",
      "0.20 to 0.40 cm",
      "not estimated",
      "2.0 %",
      "1.0 %",
      "1.00 to 2.00 cm",
    ]);
  });

  it("tallies every cell once, and counts the causes that were tried", () => {
    const tally = Object.values(verdictTally(two.differences.cells)).reduce((sum, count) => sum + count, 0);
    expect(tally).toBe(4);
    expect(two.method.candidates).toBeGreaterThan(0);
  });

  it("exports every reading's steps so that they add up", () => {
    const lines = stepsCsv(two.testers, { pattern: two.pattern, unit: "cm" }).split("\r\n");
    expect(lines).toHaveLength(1 + 3);
    expect(lines[1]).toMatch(/^"'=Alva",S,A,Bust,100,100,0,-8\.9,/);
    for (const line of lines.slice(1)) {
      const [design, worked, gauge, gap, reading] = line.split(",").slice(5, 10).map(Number);
      // Five numbers, each rounded to 0.1 cm.
      const sum = (design ?? 0) + (worked ?? 0) + (gauge ?? 0) + (gap ?? 0);
      expect(Math.abs(sum - (reading ?? Number.NaN))).toBeLessThan(5 * 0.05 + 1e-9);
    }
  });
});
