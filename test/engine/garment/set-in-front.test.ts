import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { areaWithin, outlined, rounded, stitchRuns } from "./outlined";

/* A stitch is 0.5 cm × 0.4 cm = 0.2 cm², in rib 0.4 cm × 0.4 cm = 0.16 cm². All expected values are worked by hand. */

const setInFront: readonly Step[] = [
  { in: "front", do: "start", how: "cast-on", stitches: 80, worked: "flat" },
  { in: "front", do: "work", rows: 60 },
  { id: "armhole", in: "front", do: "bind-off", at: "both", each: 5 },
  { in: "front", do: "work", rows: 10, shape: [{ at: "both", stitches: 1, times: 5, as: "decrease", every: 2 }] },
  { in: "front", do: "work", rows: 20 },
  {
    ...{ in: "front", do: "divide" },
    into: [
      { part: "right", stitches: 20 },
      { part: "neck", stitches: 20 },
      { part: "left", stitches: 20 },
    ],
  },
  { in: "neck", do: "end", how: "bind-off", edge: "neck-edge" },
  { in: "left", do: "work", rows: 10, shape: [{ at: "right", stitches: 1, times: 5, as: "decrease", every: 2 }] },
  { in: "right", do: "work", rows: 10, shape: [{ at: "left", stitches: 1, times: 5, as: "decrease", every: 2 }] },
  { in: "left", do: "bind-off", at: "left", each: 5, times: 3 },
  { in: "right", do: "bind-off", at: "right", each: 5, times: 3 },
];

const setInPieces = [
  {
    id: "front",
    parts: ["front", "left", "neck", "right"],
    edges: [
      { id: "left-neck", part: "left", side: "right" },
      { id: "right-neck", part: "right", side: "left" },
      { id: "side-seam", part: "front", side: "left", steps: ["s2", "s2"] },
    ],
  },
] as const;

describe("a set-in front whose neck divides it into two shoulders", () => {
  const { piece, faults } = outlined(garmentPattern({ pieces: setInPieces, steps: setInFront }));
  const front = piece("front");

  it("binds its armholes off one row apart, and each shoulder on rows that start there", () => {
    expect(faults).toEqual([]);
    // Rows 61 and 62 start at the right and the left armhole. 5 times 2 fewer, on the 2nd, 4th … of 10 rows, from row 63.
    // Row 92 is the last before the neck: 20 + 20 are left. The right shoulder's bind-offs start on row 103, a right-side row;
    // the left one's on row 104, so that row 103 is worked even there and row 107 comes after its second bind-off.
    expect(stitchRuns(front.steps)).toEqual([
      ...["80 × 60", "75 × 1", "70 × 2", "68 × 2", "66 × 2", "64 × 2", "62 × 2", "60 × 21"],
      ...["20 + 20 × 1", "19 + 19 × 2", "18 + 18 × 2", "17 + 17 × 2", "16 + 16 × 2", "15 + 15 × 1"],
      ...["15 + 10 × 1", "10 + 10 × 1", "10 + 5 × 1", "5 + 5 × 1", "5 × 1"],
    ]);
  });

  it("has as many stitches and as much area as its rows", () => {
    // 80 × 60 + 75 + 70 × 2 + (68 + 66 + 64 + 62) × 2 + 60 × 21 = 4800 + 75 + 140 + 520 + 1260 = 6795;
    // 40 + (38 + 36 + 34 + 32) × 2 + 30 = 350; 25 + 20 + 15 + 10 + 5 = 75.
    expect(front.stitches).toBe(7220);
    // × 0.2 cm².
    expect(front.areaCm2).toBeCloseTo(1444, 9);
    expect(areaWithin(front.outline)).toBeCloseTo(1444, 6);
  });

  it("is outlined in steps, exactly", () => {
    // Heights: row 60 ends at 24, row 61 at 24.4, row 62 at 24.8, row 92 at 36.8, row 102 at 40.8, row 107 at 42.8 cm.
    expect(rounded(front.outline)).toEqual([
      ...[
        [-20, 0],
        [20, 0],
        [20, 24],
        [17.5, 24],
      ],
      ...[
        [17.5, 25.2],
        [17, 25.2],
        [17, 26],
        [16.5, 26],
        [16.5, 26.8],
        [16, 26.8],
        [16, 27.6],
        [15.5, 27.6],
      ],
      ...[
        [15.5, 28.4],
        [15, 28.4],
        [15, 40.8],
        [12.5, 40.8],
        [12.5, 41.6],
        [10, 41.6],
        [10, 42.4],
        [7.5, 42.4],
      ],
      ...[
        [7.5, 40.4],
        [7, 40.4],
        [7, 39.6],
        [6.5, 39.6],
        [6.5, 38.8],
        [6, 38.8],
        [6, 38],
        [5.5, 38],
        [5.5, 37.2],
      ],
      ...[
        [5, 37.2],
        [5, 36.8],
        [-5, 36.8],
        [-5, 37.2],
        [-5.5, 37.2],
        [-5.5, 38],
        [-6, 38],
        [-6, 38.8],
        [-6.5, 38.8],
      ],
      ...[
        [-6.5, 39.6],
        [-7, 39.6],
        [-7, 40.4],
        [-7.5, 40.4],
        [-7.5, 42.8],
        [-10, 42.8],
        [-10, 42],
        [-12.5, 42],
      ],
      ...[
        [-12.5, 41.2],
        [-15, 41.2],
        [-15, 28.4],
        [-15.5, 28.4],
        [-15.5, 27.6],
        [-16, 27.6],
        [-16, 26.8],
      ],
      ...[
        [-16.5, 26.8],
        [-16.5, 26],
        [-17, 26],
        [-17, 25.2],
        [-17.5, 25.2],
        [-17.5, 24.4],
        [-20, 24.4],
        [-20, 0],
      ],
    ]);
  });

  it("has a neck along which a band is picked up at a rate, bound-off stitches one for one", () => {
    const band: Step = {
      ...{ id: "band", in: "band", do: "start", how: "pick-up", worked: "flat", stitches: 0, rate: [3, 4] },
      along: [{ edge: "left-neck" }, { edge: "neck-edge" }, { edge: "right-neck" }],
    };
    const steps = (stitches: number): Step[] => [
      { ...band, stitches },
      { in: "band", do: "work", rows: 8, fabric: "rib" },
      { in: "band", do: "end", how: "bind-off", edge: "band-edge" },
      ...setInFront,
    ];
    const pieces = [...setInPieces, { id: "band" }];
    // The left neck edge has 15 rows (93–107), the right one 14: the right shoulder's last 5 stitches go on row 107.
    // 15 × 3/4 + 20 + 14 × 3/4 = 41.75, each edge rounded up or down: 41 to 42.
    expect(outlined(garmentPattern({ pieces, steps: steps(42) })).faults).toEqual([]);
    expect(outlined(garmentPattern({ pieces, steps: steps(45) })).messages).toEqual([
      "band: 45 stitches are to be picked up, and the edges give 41.75 (3 stitches for every 4 rows along 29 rows). Pick up 42, or change the rate or the edge.",
    ]);
  });
});
