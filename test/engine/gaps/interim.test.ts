import { describe, expect, it } from "vitest";
import { gaps, type GapsOutput } from "@/engine/gaps";
import { studentTQuantile } from "@/engine/distributions";
import { callDocument, reader } from "../../factories/call";

function cell(output: GapsOutput, size: string, measurement: string) {
  const found = output.cells.find((candidate) => candidate.size === size && candidate.measurement === measurement);
  if (found === undefined) throw new Error(`no cell ${size} ${measurement}`);
  return found;
}

const large = { size: "large" } as const;

describe("the interim estimate", () => {
  const call = callDocument([
    reader("a", { bust: 101, length: 40 }),
    reader("b", { bust: 103, length: 41 }),
    reader("c", { bust: 128 }, large),
    reader("d", { bust: 126 }, large),
    reader("e", { bust: 127 }, large),
  ]);

  it("takes each cell's mean, with the spread pooled over all cells in tolerances", () => {
    // By hand, in tolerances: S bust .5, 1.5; S length 0, 1; L bust 4, 3, 3.5. Squares about the means .5 + .5 + .5 over
    // 1 + 1 + 2 degrees of freedom: sd √.375.
    const output = gaps(call);
    const sd = Math.sqrt(1.5 / 4);
    const bust = cell(output, "small", "bust");
    expect(bust).toMatchObject({ reports: 2 });
    expect(bust.gapCm).toBeCloseTo(2, 12);
    expect(bust.standardErrorCm).toBeCloseTo((2 * sd) / Math.SQRT2, 12);
    expect(bust.highCm).toBeCloseTo(2 + (studentTQuantile(0.95, 4) * 2 * sd) / Math.SQRT2, 12);
    expect(cell(output, "large", "bust").gapCm).toBeCloseTo(7, 12);
    expect(cell(output, "large", "bust").verdict).toBe("off");
  });

  it("says nothing of a cell without a report", () => {
    expect(cell(gaps(call), "large", "length")).toEqual({
      size: "large",
      measurement: "length",
      reports: 0,
      gapCm: null,
      standardErrorCm: null,
      lowCm: null,
      highCm: null,
      chanceOff: null,
      verdict: null,
      testersToSettle: null,
    });
  });

  it("runs through sizes, and in each through measurements", () => {
    expect(gaps(call).cells.map(({ size, measurement }) => `${size} ${measurement}`)).toEqual([
      "small bust",
      "small length",
      "large bust",
      "large length",
    ]);
  });

  it("falls back on the scatter that a prediction expects where no cell has two testers, or all readings are equal", () => {
    for (const testers of [[reader("a", { bust: 100 })], [reader("a", { bust: 100 }), reader("b", { bust: 100 })]]) {
      const { standardErrorCm, verdict } = cell(gaps(callDocument(testers)), "small", "bust");
      expect(standardErrorCm).toBeGreaterThan(0.5);
      expect(verdict).toBe("unsettled");
    }
  });

  it("counts repeated readings by their mean, as one report", () => {
    const her = reader("a", {}, { readings: [100, 104].map((cm) => ({ measurement: "bust", cm })) });
    expect(cell(gaps(callDocument([her])), "small", "bust")).toMatchObject({ reports: 1, gapCm: 2 });
  });

  it("leaves out what was changed on purpose, set aside or read unwashed, unless a person keeps it", () => {
    const reading = { measurement: "bust", cm: 110 } as const;
    const without = [
      reader("a", { bust: 110 }, { changed: ["bust"] }),
      reader("b", {}, { readings: [{ ...reading, decision: "set-aside" }] }),
      reader("c", {}, { readings: [{ ...reading, state: "unwashed" }] }),
    ];
    expect(cell(gaps(callDocument(without)), "small", "bust").reports).toBe(0);
    const kept = reader("d", {}, { readings: [{ ...reading, state: "unwashed", decision: "keep" }] });
    expect(cell(gaps(callDocument([...without, kept])), "small", "bust").reports).toBe(1);
  });

  it("tells every reading's steps, counted or not, and they add up", () => {
    const { steps } = gaps(
      callDocument([reader("a", { bust: 110, length: 38 }, { worked: { width: 100 }, changed: ["bust"] })]),
    );
    expect(steps).toHaveLength(2);
    expect(steps[0]).toMatchObject({
      targetCm: 100,
      designCm: 100,
      workedStepCm: 2,
      gaugeStepCm: 0,
      gapCm: 8,
      readingCm: 110,
    });
    for (const { designCm, workedStepCm, gaugeStepCm, gapCm, readingCm } of steps) {
      expect(Math.abs(designCm + workedStepCm + gaugeStepCm + gapCm - readingCm)).toBeLessThan(1e-9);
    }
  });

  it("gives the same bytes for the same document, and an empty call its whole shape", () => {
    expect(JSON.stringify(gaps(call))).toBe(JSON.stringify(gaps(structuredClone(call))));
    const empty = gaps(callDocument([]));
    expect(empty.cells).toHaveLength(4);
    expect(empty.gauge.map(({ fabric, direction, stated }) => ({ fabric, direction, stated }))).toEqual([
      { fabric: "main", direction: "stitches", stated: 20 },
      { fabric: "main", direction: "rows", stated: 25 },
    ]);
  });
});
