import { expect, it } from "vitest";
import { patternChanges } from "@/engine/editing";
import { patternDocument } from "../../factories/pattern";

const before = patternDocument();

it("finds nothing between a pattern and itself", () => {
  expect(patternChanges(before, structuredClone(before))).toEqual([]);
});

it("tells a new allowance, an ease that parts by size, a gauge and rewritten terms", () => {
  const [bust, length] = before.measurements;
  if (bust === undefined || length === undefined) throw new Error("the factory has two measurements");
  const after = patternDocument({
    fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 21, rows: 25 } }],
    allowances: [...before.allowances, { id: "correction", label: "Correction", cm: -0.5 }],
    measurements: [
      { ...bust, target: { body: "bust", easeCm: { small: 10, large: 12 } } },
      { ...length, terms: [...length.terms, { times: 1, allowance: "correction" }] },
    ],
  });
  expect(patternChanges(before, after).map(({ what, size, was, becomes }) => [what, size, was, becomes])).toEqual([
    ["Fabric “Main”: gauge, stitches", undefined, 20, 21],
    ["Correction", undefined, null, -0.5],
    ["Ease of Bust", "L", 10, 12],
    ["How Length is worked out", undefined, null, null],
  ]);
});

it("tells what is gone", () => {
  const after = patternDocument({ measurements: before.measurements.slice(0, 1) });
  expect(patternChanges(before, after)).toMatchObject([{ path: "measurements.length", was: "Length", becomes: null }]);
});

it("goes through the sizes in their order, whatever order the record was stored in", () => {
  const after = patternDocument({
    grading: { width: { large: 119, small: 99 }, height: { large: 110, small: 100 } },
  });
  expect(patternChanges(before, after).map(({ size }) => size)).toEqual(["S", "L"]);
});
