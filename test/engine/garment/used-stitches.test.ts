import { expect, it } from "vitest";
import { usedStitches } from "@/engine/garment";
import { indexPattern, predictStitches, workedStitches, patternWorking } from "@/engine/prediction";
import { yarnNeeds } from "@/engine/yarn";
import { callDocument } from "../../factories/call";
import { garmentPattern } from "../../factories/garment-pattern";
import { tester } from "../../factories/pattern";

/** Two fronts, mirrored: a rib, then a stripe in silk, an armhole bound off, and the rest to a length. */
const fronts = garmentPattern({
  counts: { width: ["stitches", 20, 24], underarm: ["stitches", 4, 30], rows: ["rows", 10, 12] },
  lengths: [{ id: "yoke", label: "Yoke", cm: { small: 4, large: 4.8 } }],
  pieces: [{ id: "front", made: 2, mirrored: true }],
  steps: [
    { in: "front", do: "start", how: "cast-on", stitches: { count: "width" }, worked: "flat" },
    { in: "front", do: "work", rows: 6, fabric: "rib" },
    { in: "front", do: "work", rows: { count: "rows" }, yarn: "silk" },
    { in: "front", do: "bind-off", at: "right", each: { count: "underarm" }, id: "armhole" },
    { in: "front", do: "work", rows: { length: "yoke" } },
    { in: "front", do: "end", how: "bind-off", edge: "top" },
  ],
});

it("are counted by fabric and yarn, row by row, of both hands", () => {
  // By hand, small: 6 rows of 20 in rib; 10 of 20 in silk; one row of 16 with the bind-off, which the mirrored front works
  // after one row of 20 more, and 4 cm ÷ 0.4 = 10 rows of 16.
  expect(usedStitches(fronts, "small")).toEqual({
    used: [
      { piece: "front", fabric: "rib", yarn: "wool", stitches: 2 * 6 * 20 },
      { piece: "front", fabric: "main", yarn: "silk", stitches: 2 * 10 * 20 },
      { piece: "front", fabric: "main", yarn: "wool", stitches: 16 + 20 + 16 + 2 * 10 * 16 },
    ],
    faults: [],
  });
});

it("are those of the rest where a size cannot be worked, with the step and why", () => {
  const { used, faults } = usedStitches(fronts, "large");
  expect(used.filter(({ yarn }) => yarn === "silk")).toEqual([
    { piece: "front", fabric: "main", yarn: "silk", stitches: 2 * 12 * 24 },
  ]);
  expect(faults.map(({ step, size }) => [step, size])).toContainEqual(["armhole", "large"]);
  expect(faults[0]?.message).toMatch(/^There are 24 stitches left in “front”/);
});

it("are a tester’s own where they made other counts, lengths or rows to a length at their gauge", () => {
  const swatches = [
    { fabric: "main", toolMm: 4, stitches: 20, acrossCm: 10, rows: 50, alongCm: 10, washed: true },
  ] as const;
  const made = tester({ worked: { width: 30 }, workedLengths: { yoke: 2 }, swatches });
  // By hand: 6 and 10 rows of 30, then 26: 2 cm at 5 rows a cm are 10 rows.
  expect(predictStitches({ pattern: fronts, size: "small", tester: made })).toEqual([
    { piece: "front", stitches: 2 * 16 * 30 + 26 + 30 + 26 + 2 * 10 * 26 },
  ]);
});

it("are worked once for all who follow the pattern", () => {
  const index = indexPattern(fronts);
  const one = workedStitches(index, patternWorking(index, "small"));
  expect(workedStitches(indexPattern(fronts), patternWorking(index, "small"))).toBe(one);
});

it("give the yarn of every size", () => {
  const yarns = [
    { id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 },
    { id: "silk", label: "Silk", metresPerBall: 100, gramsPerBall: 50 },
  ];
  const weighed = tester({ yarn: [{ yarn: "silk", grams: 20, metresPer100g: 200 }] });
  const { yarns: needs } = yarnNeeds(callDocument([weighed], { pattern: { ...fronts, yarns } }));
  const silk = needs.find(({ yarn }) => yarn === "silk");
  // By hand: 40 m for 400 stitches, at the stated gauge; large has 576.
  expect(silk?.sizes.map(({ stitches }) => stitches)).toEqual([400, 576]);
  expect(silk?.sizes.map(({ expectedMetres }) => Number(expectedMetres?.toFixed(6)))).toEqual([40, 57.6]);
});
