import { describe, expect, it } from "vitest";
import { gaps, type GapsOutput } from "@/engine/gaps";
import { callDocument, reader } from "../../factories/call";

function cell(output: GapsOutput, size: string, measurement: string) {
  const found = output.cells.find((candidate) => candidate.size === size && candidate.measurement === measurement);
  if (found === undefined) throw new Error(`no cell ${size} ${measurement}`);
  return found;
}

const large = { size: "large" } as const;

describe("the gaps of a call", { timeout: 120_000 }, () => {
  const call = callDocument([
    reader("a", { bust: 101, length: 40 }),
    reader("b", { bust: 103, length: 41 }),
    reader("c", { bust: 128 }, large),
    reader("d", { bust: 126 }, large),
    reader("e", { bust: 127 }, large),
  ]);

  it("finds three testers' seven centimetres too many, and lets a cell without a report lean on its neighbours", () => {
    const output = gaps(call);
    expect(output.status).toBe("converged");
    expect(cell(output, "large", "bust").gapCm).toBeGreaterThan(4);
    expect(cell(output, "large", "bust").verdict).toBe("off");
    const empty = cell(output, "large", "length");
    expect(empty.reports).toBe(0);
    expect(empty.standardErrorCm ?? 0).toBeGreaterThan(cell(output, "small", "length").standardErrorCm ?? 0);
    expect(empty.highCm ?? 0).toBeGreaterThan(empty.lowCm ?? 0);
  });

  it("runs through sizes, and in each through measurements", () => {
    expect(gaps(call).cells.map(({ size, measurement }) => `${size} ${measurement}`)).toEqual([
      "small bust",
      "small length",
      "large bust",
      "large length",
    ]);
  });

  it("cannot tell yet from one tester, or from readings that are all equal", () => {
    for (const testers of [[reader("a", { bust: 104 })], [reader("a", { bust: 102 }), reader("b", { bust: 102 })]]) {
      const { standardErrorCm, verdict, gapCm } = cell(gaps(callDocument(testers)), "small", "bust");
      expect(standardErrorCm).toBeGreaterThan(0.5);
      expect(gapCm).toBeGreaterThan(0);
      expect(["unsettled", "leaning"]).toContain(verdict);
    }
  });

  it("asks for more testers if they would decide a verdict, and for none if thirty would not", () => {
    const [few, edge, sure] = [
      [reader("a", { bust: 100 }), reader("b", { bust: 100 })],
      // Twelve who all read just the tolerance of two centimetres too much.
      Array.from({ length: 12 }, (_, index) => reader(`t${index}`, { bust: 102 + (index % 2 === 0 ? 0.4 : -0.2) })),
      Array.from({ length: 6 }, (_, index) => reader(`t${index}`, { bust: 100 })),
    ].map((testers) => cell(gaps(callDocument(testers)), "small", "bust"));
    expect(few?.verdict).toBe("unsettled");
    expect(few?.testersToSettle ?? 30).toBeLessThanOrEqual(30);
    expect(few?.chanceWithThree).toBeGreaterThan(0.3);
    expect(["unsettled", "leaning"]).toContain(edge?.verdict);
    expect(edge?.testersToSettle).toBeNull();
    expect(edge?.chanceWithThree).toBeLessThan(few?.chanceWithThree ?? 0);
    expect(sure).toMatchObject({ verdict: "holds", testersToSettle: null, chanceWithThree: null });
  });

  it("learns more from measuring a garment again than from measuring it once, and less than from another garment", () => {
    const [once, again, another] = [
      [reader("a", { bust: 102 })],
      [reader("a", {}, { readings: [102, 102].map((cm) => ({ measurement: "bust", cm })) })],
      [reader("a", { bust: 102 }), reader("b", { bust: 102 })],
    ].map((testers) => cell(gaps(callDocument(testers)), "small", "bust"));
    expect(again?.reports).toBe(1);
    expect(again?.standardErrorCm).toBeLessThan(once?.standardErrorCm ?? 0);
    expect(again?.standardErrorCm).toBeGreaterThan(another?.standardErrorCm ?? 0);
  });

  it("leaves out what was changed on purpose, set aside or read unwashed, unless a person decides to keep it", () => {
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
