import { describe, expect, it } from "vitest";
import { plantedCall } from "@/engine/calibration";
import { gaps, screenOutliers, type GapsOutput } from "@/engine/gaps";
import { parseCall, type CallDocument, type Tester } from "@/engine/pattern";
import { crochetedCardigan } from "@/engine/simulation";
import { yarnNeeds } from "@/engine/yarn";
import { callDocument, reader } from "../../factories/call";

const CALL = plantedCall({
  pattern: crochetedCardigan(),
  design: "2–4 a size",
  fault: "drawn",
  entryErrorShare: 0,
  seed: 41,
}).call;

function first(change: (tester: Tester) => object): unknown {
  return {
    ...CALL,
    testers: CALL.testers.map((tester, index) => (index === 0 ? { ...tester, ...change(tester) } : tester)),
  };
}

/** Every number of an output, with where it stands. */
function numbersOf(value: unknown, path = "$"): [string, number][] {
  if (typeof value === "number") return [[path, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) => numbersOf(member, `${path}.${key}`));
}

function expectFinite(output: unknown): void {
  const numbers = numbersOf(output);
  expect(numbers.length).toBeGreaterThan(0);
  expect(numbers.filter(([, value]) => !Number.isFinite(value))).toEqual([]);
}

function isUntold({ cells }: GapsOutput): boolean {
  return cells.every(({ verdict }) => verdict === "unsettled" || verdict === "leaning");
}

describe("bad and scanty input", { timeout: 300_000 }, () => {
  it.each([
    [
      "a swatch of zero width",
      first(({ swatches }) => ({ swatches: swatches.map((swatch) => ({ ...swatch, acrossCm: 0 })) })),
      "testers[0].swatches[0].acrossCm",
    ],
    [
      "a count worked as a fraction",
      first(() => ({ worked: { "back-stitches": 70.5 } })),
      "testers[0].worked.back-stitches",
    ],
    [
      "grams without a ball band",
      first(() => ({ yarn: [{ yarn: "main", grams: 400 }] })),
      "testers[0].yarn[0].metresPer100g",
    ],
  ])("tells %s by its path", (_, document, path) => {
    const parsed = parseCall(document);
    expect(parsed.ok ? [] : parsed.faults.map((fault) => fault.path)).toContain(path);
  });

  it("stays finite if half the readings are entry errors", () => {
    const slipped: CallDocument = {
      ...CALL,
      testers: CALL.testers.map((tester) => ({
        ...tester,
        readings: tester.readings.map((reading, index) =>
          index % 2 === 0 ? { ...reading, cm: reading.cm / 2.54 } : reading,
        ),
      })),
    };
    const output = gaps(slipped);
    expectFinite(output);
    expect(output.suspects.length).toBeGreaterThan(20);
  });

  it.each([
    ["nobody", callDocument([])],
    ["one tester", callDocument([reader("a", { bust: 101 })])],
    ["testers who all read the same", callDocument(["a", "b", "c"].map((id) => reader(id, { bust: 100, length: 40 })))],
  ])("stays finite and reports nothing as off with %s", (_, call) => {
    const output = gaps(call);
    expectFinite(output);
    expect(output.status).toBe("converged");
    expect(output.cells.filter(({ verdict }) => verdict === "off")).toEqual([]);
    expect(JSON.stringify(yarnNeeds(screenOutliers(call).call))).not.toContain("NaN");
  });

  it("cannot tell yet from one tester in the whole call", () => {
    expect(isUntold(gaps(callDocument([reader("a", { bust: 101 })])))).toBe(true);
  });

  it.each([
    ["one tester who read everything", CALL.testers.slice(0, 1)],
    [
      "testers of every size who all read the same numbers",
      CALL.testers.map((tester) => ({ ...tester, readings: CALL.testers[0]?.readings ?? [] })),
    ],
  ])("stays finite with %s", (_, testers) => {
    expectFinite(gaps({ ...CALL, testers }));
    expectFinite(yarnNeeds(screenOutliers({ ...CALL, testers }).call));
  });

  it("ends with every tester that a call may hold", () => {
    const many = Array.from({ length: 20_000 }, (_, index) =>
      reader(`t${index}`, { bust: 100 + ((index * 37) % 11) / 5 }),
    );
    const output = gaps(callDocument(many));
    expect(output.status).toBe("converged");
    expect(output.cells[0]?.reports).toBe(20_000);
    expect(output.cells[0]?.gapCm).toBeCloseTo(1, 1);
  });
});
