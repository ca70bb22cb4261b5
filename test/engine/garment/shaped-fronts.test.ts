import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { areaWithin, outlined, stitchRuns } from "./outlined";

/* A stitch is 0.5 cm × 0.4 cm = 0.2 cm², in rib 0.4 cm × 0.4 cm = 0.16 cm². All expected values are worked by hand. */

describe("a V-neck cardigan front", () => {
  const steps: readonly Step[] = [
    { in: "front", do: "start", how: "cast-on", stitches: 40, worked: "flat" },
    { in: "front", do: "work", rows: 60 },
    { in: "front", do: "bind-off", at: "left", each: 4 },
    {
      ...{ id: "neck", in: "front", do: "work", rows: 40 },
      shape: [
        { at: "left", stitches: 1, times: 4, as: "decrease", every: 2, start: 1 },
        { at: "right", stitches: 1, times: 10, as: "decrease", every: 4, start: 2 },
      ],
    },
    { in: "front", do: "end", how: "bind-off", edge: "shoulder" },
  ];
  const { piece, faults } = outlined(garmentPattern({ pieces: [{ id: "front", made: 2, mirrored: true }], steps }));
  const front = piece("front");

  it("is shaped at armhole and neck at the same time, each at its own rate", () => {
    expect(faults).toEqual([]);
    // Row 61 is a right-side row, worked even; row 62 starts at the left edge: 36. Then from row 63 on: armhole rows 1, 3, 5, 7,
    // neck rows 2, 6, 10 … 38: 35, 34, 33, 33, 32, 31, 30, 30, 30, 29 …, in all 4 and 10 fewer: 22.
    expect(stitchRuns(front.steps).slice(0, 10)).toEqual([
      ...["40 × 61", "36 × 1", "35 × 1", "34 × 1", "33 × 2", "32 × 1", "31 × 1", "30 × 3", "29 × 4", "28 × 4"],
    ]);
    expect(front.steps.at(-1)).toMatchObject({ row: 102, onNeedle: [22] });
    // Left edge: −10 + 2 + 2 = −6; right edge: 10 − 5 = 5.
    expect(front.steps.at(-1)?.spans).toEqual([[-6, 5]]);
  });

  it("has its neck edge where each row ends", () => {
    const rightEdges = front.steps.slice(62, 70).map(({ rightCm }) => rightCm);
    expect(rightEdges).toEqual([10, 9.5, 9.5, 9.5, 9.5, 9, 9, 9]);
  });

  it("is mirrored in the other front, whose bind-off falls one row earlier", () => {
    const other = front.mirrored;
    // There the armhole is at the right: row 61 starts at it, so that it has 101 rows.
    expect(stitchRuns(other?.steps ?? []).slice(0, 3)).toEqual(["40 × 60", "36 × 1", "35 × 1"]);
    expect(other?.steps.at(-1)).toMatchObject({ row: 101, onNeedle: [22], spans: [[-5, 6]] });
    // First front: 40 × 61 + 36 + 35 + 34 + 33 × 2 + 32 + 31 + 30 × 3 + 4 × (29 + … + 23) + 22 × 3 = 3558; the other has one row of
    // 40 fewer.
    const sum = 40 * 61 + 36 + 35 + 34 + 33 * 2 + 32 + 31 + 30 * 3 + 4 * (29 + 28 + 27 + 26 + 25 + 24 + 23) + 22 * 3;
    expect(front.stitches).toBe(sum + (sum - 40));
  });
});

describe("a tank with wide shaped straps", () => {
  const strap = (part: string, outer: "left" | "right", inner: "left" | "right"): Step[] => [
    {
      ...{ in: part, do: "work", rows: 20 },
      shape: [
        { at: inner, stitches: 2, times: 3, as: "bind-off", every: 2, start: 1 },
        { at: outer, stitches: 1, times: 4, as: "increase", start: 12, every: 2 },
      ],
    },
    { in: part, do: "end", how: "bind-off", edge: `${part}-top` },
  ];
  const { piece, faults } = outlined(
    garmentPattern({
      pieces: [{ id: "front", parts: ["front", "right", "neck", "left"] }],
      steps: [
        { in: "front", do: "start", how: "cast-on", stitches: 90, worked: "flat" },
        { in: "front", do: "work", rows: 50 },
        { in: "front", do: "bind-off", at: "both", each: 6 },
        { in: "front", do: "bind-off", at: "both", each: 2, times: 2 },
        {
          ...{ in: "front", do: "divide" },
          into: [
            { part: "right", stitches: 22 },
            { part: "neck", stitches: 26 },
            { part: "left", stitches: 22 },
          ],
        },
        { in: "neck", do: "hold", at: "even", each: 26, to: "held-neck" },
        ...strap("left", "left", "right"),
        ...strap("right", "right", "left"),
      ],
    }),
  );

  it("binds off in steps at the armholes and, inside, at the neck", () => {
    expect(faults).toEqual([]);
    expect(stitchRuns(piece("front").steps)).toEqual([
      // 90 − 6 − 6 = 78, then 2 fewer in each of 4 rows: 70 = 22 + 26 + 22.
      ...["90 × 50", "84 × 1", "78 × 1", "76 × 1", "74 × 1", "72 × 1", "70 × 1"],
      // Row 57 is a right-side row and starts at the right edge: the left strap's neck edge. The right strap's is its left edge,
      // where row 58 starts. Bind-offs in rows 57, 59, 61 and 58, 60, 62; 16 and 16 are left.
      ...["20 + 22 × 1", "20 + 20 × 1", "18 + 20 × 1", "18 + 18 × 1", "16 + 18 × 1", "16 + 16 × 6"],
      // Increases in rows 12, 14, 16 and 18 of 20, which are rows 68, 70, 72 and 74.
      ...["17 + 17 × 2", "18 + 18 × 2", "19 + 19 × 2", "20 + 20 × 3"],
    ]);
  });

  it("keeps its area", () => {
    const front = piece("front");
    expect(areaWithin(front.outline)).toBeCloseTo(front.areaCm2, 6);
    // Straps end 10 cm wide, from ±(45 − 6 − 4) × 0.5 + 2 = ±19.5 inwards.
    expect(front.steps.at(-1)?.spans).toEqual([
      [-19.5, -9.5],
      [9.5, 19.5],
    ]);
  });
});
