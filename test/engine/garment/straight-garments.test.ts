import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { areaWithin, outlined, rounded, stitchRuns } from "./outlined";

/* A stitch is 0.5 cm × 0.4 cm = 0.2 cm², in rib 0.4 cm × 0.4 cm = 0.16 cm². All expected values are worked by hand. */

describe("a drop-shoulder body", () => {
  const pattern = garmentPattern({
    counts: { width: ["stitches", 80, 96], rows: ["rows", 90, 100] },
    pieces: [{ id: "front" }],
    steps: [
      { in: "front", do: "start", how: "cast-on", stitches: { count: "width" }, worked: "flat" },
      { in: "front", do: "work", rows: 10, fabric: "rib" },
      { in: "front", do: "work", rows: { count: "rows" } },
      { in: "front", do: "end", how: "bind-off", edge: "top" },
    ],
  });

  it("is a rectangle over a narrower rib, in every size", () => {
    // Small: rib 80 × 0.4 = 32 cm wide and 10 × 0.4 = 4 cm high, then 80 × 0.5 = 40 cm, up to (10 + 90) × 0.4 = 40 cm.
    const small = outlined(pattern).piece("front");
    expect(rounded(small.outline)).toEqual([
      [-16, 0],
      [16, 0],
      [16, 4],
      [20, 4],
      [20, 40],
      [-20, 40],
      [-20, 4],
      [-16, 4],
      [-16, 0],
    ]);
    // 80 × 100 stitches; 32 × 4 + 40 × 36.
    expect(small.stitches).toBe(8000);
    expect(small.areaCm2).toBeCloseTo(1568, 9);
    // Large: 96 × 110; 38.4 × 4 + 48 × 40.
    const large = outlined(pattern, "large").piece("front");
    expect(large.stitches).toBe(10_560);
    expect(large.areaCm2).toBeCloseTo(2073.6, 9);
    expect(outlined(pattern, "large").faults).toEqual([]);
  });

  it("has a row for each row worked, as wide as its stitches", () => {
    const { steps } = outlined(pattern).piece("front");
    expect(stitchRuns(steps)).toEqual(["80 × 100"]);
    expect(steps[9]).toMatchObject({ row: 10, leftCm: -16, rightCm: 16, circumferenceCm: null });
    expect(steps[10]).toMatchObject({ row: 11, spans: [[-20, 20]] });
  });
});

describe("a vest whose shoulders slope in short rows", () => {
  const { piece, messages } = outlined(
    garmentPattern({
      pieces: [
        { id: "back", edges: [{ id: "back-side", part: "back", side: "left" }] },
        { id: "front", edges: [{ id: "front-side", part: "front", side: "right" }] },
      ],
      steps: (["back", "front"] as const).flatMap((part): Step[] => [
        { in: part, do: "start", how: "cast-on", stitches: 60, worked: "flat" },
        { in: part, do: "work", rows: 50 },
        { id: `${part}-slope`, in: part, do: "short-rows", at: "both", each: 5, turns: 2 },
        { in: part, do: "work", rows: 1 },
        {
          ...{ id: `${part}-end`, in: part, do: "end", how: "three-needle", edge: `${part}-top` },
          with: { part: part === "back" ? "front" : "back" },
        },
      ]),
      seams: [{ a: { edge: "back-side" }, b: { edge: "front-side" } }],
    }),
  );
  const back = piece("back");

  it("keeps all stitches on the needle and works fewer", () => {
    expect(messages).toEqual([]);
    expect(stitchRuns(back.steps)).toEqual(["60 × 55"]);
    // 60 × 50, then rows over 55, 50, 45 and 40 stitches, then 60 once more.
    expect(back.stitches).toBe(3000 + 190 + 60);
  });

  it("is higher at the neck than at the armholes, by the rows that pass them", () => {
    // Rows 51 and 53 turn 5 and 10 stitches before the left edge, rows 52 and 54 before the right one; row 55 goes over all.
    expect(rounded(back.outline)).toEqual([
      ...[
        [-15, 0],
        [15, 0],
        [15, 20.8],
        [12.5, 20.8],
        [12.5, 21.6],
        [10, 21.6],
        [10, 22],
      ],
      ...[
        [-10, 22],
        [-10, 21.2],
        [-12.5, 21.2],
        [-12.5, 20.4],
        [-15, 20.4],
        [-15, 0],
      ],
    ]);
    expect(areaWithin(back.outline)).toBeCloseTo(back.areaCm2, 6);
  });
});

describe("a crocheted tee worked sideways", () => {
  const { piece, messages } = outlined(
    garmentPattern({
      craft: "crochet",
      pieces: [{ id: "back", start: "side" }],
      steps: [
        {
          in: "back",
          do: "start",
          how: "foundation",
          stitches: 70,
          worked: "flat",
          turn: { stitches: 2, counts: false },
        },
        { in: "back", do: "work", rows: 19 },
        { id: "neck", in: "back", do: "leave", at: "left", each: 8 },
        { in: "back", do: "work", rows: 29 },
        { id: "again", in: "back", do: "add", at: "left", each: 8 },
        { in: "back", do: "work", rows: 20 },
        { in: "back", do: "end", how: "fasten-off", edge: "side" },
      ],
    }),
  );

  it("counts its foundation as a row, and leaves the neck where a row ends there", () => {
    expect(messages).toEqual([]);
    // Row 1 is the foundation, rows 2–20 even. Row 21 is a right-side row and ends at the left edge: it leaves 8 unworked, and
    // so do rows 22–50. Row 51 starts at the right edge: it is worked even; row 52 starts at the left one with 8 more.
    expect(stitchRuns(piece("back").steps)).toEqual(["70 × 20", "62 × 31", "70 × 21"]);
  });

  it("is as wide as its rows are high", () => {
    // 72 rows × 0.4 = 28.8 cm; the neck is 8 × 0.5 = 4 cm deep and 31 × 0.4 = 12.4 cm wide.
    expect(rounded(piece("back").outline)).toEqual([
      ...[
        [-17.5, 0],
        [17.5, 0],
        [17.5, 28.8],
        [-17.5, 28.8],
        [-17.5, 20.4],
        [-13.5, 20.4],
        [-13.5, 8],
        [-17.5, 8],
      ],
      [-17.5, 0],
    ]);
    expect(piece("back").areaCm2).toBeCloseTo(35 * 28.8 - 4 * 12.4, 9);
  });
});
