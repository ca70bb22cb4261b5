import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "@/engine/drawing";
import type { PatternDocument, PatternDocument1 } from "@/engine/pattern";
import { drawn, outlines, patternOf, type Sections } from "./one-piece";

const RUNS = 300;

/** The shoelace formula. */
function area(outline: readonly Point[]): number {
  const crossed = outline.map((point, index) => {
    const next = outline[(index + 1) % outline.length] ?? point;
    return point.xCm * next.yCm - next.xCm * point.yCm;
  });
  return Math.abs(crossed.reduce((sum, cross) => sum + cross, 0)) / 2;
}

const EACH_SIDE = { stitches: 1, edges: "both" } as const;

describe("a piece to scale, its points by hand", () => {
  it("is a rectangle where nothing is shaped", () => {
    // 98 stitches ÷ 2 = 49 cm, 100 rows ÷ 2.5 = 40 cm.
    const shape = drawn(patternOf([[98, 98, 100]]));
    expect(outlines(shape)).toEqual([["-24.5,0", "-24.5,40", "24.5,40", "24.5,0"]]);
    expect(shape).toMatchObject({
      widthCm: 49,
      heightCm: 40,
      isToScale: true,
      sketchReasons: [],
      marks: [],
      joins: [],
    });
    expect(shape.edges.every(({ isSure }) => isSure)).toBe(true);
  });

  it("slopes over each interval of the plan", () => {
    // 3 decreases each side in 14 rows: 2 of 5 rows, 1 of 4. After row 10 (4 cm) 16 stitches (8 cm), after row 14 14 (7 cm).
    const shape = drawn(patternOf([[20, 14, 14, EACH_SIDE]]));
    expect(outlines(shape)).toEqual([["-5,0", "-4,4", "-3.5,5.6", "3.5,5.6", "4,4", "5,0"]]);
  });

  it("stands straight over the rows that are worked even after the last event", () => {
    // 6 increases at the left edge in 24 of 25 rows, 9.6 cm; 4 stitches are 2 cm, 10 are 5: from −1 to −4.
    // Middled on its box of 5 cm, everything lies 1.5 further right.
    const shape = drawn(patternOf([[4, 10, 25, { stitches: 1, edges: "left", everyOther: true }]]));
    expect(outlines(shape)).toEqual([["0.5,0", "-2.5,9.6", "-2.5,10", "2.5,10", "2.5,9.6", "2.5,0"]]);
  });

  it("is as wide and as long as the fabric settles", () => {
    const settled = { id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 } };
    const fabrics = [{ ...settled, settles: { across: 1.1, along: 0.9 } }];
    const shape = drawn(patternOf([[20, 20, 25]], {}, { fabrics }));
    expect([shape.widthCm, shape.heightCm]).toEqual([expect.closeTo(11, 9), expect.closeTo(9, 9)]);
  });

  it("hangs from the neck where it starts there, turned by half: the left edge of the work is on the right", () => {
    // 20 → 10 stitches at the left edge over 25 rows: 10 cm wide above, 5 cm below.
    const shape = drawn(patternOf([[20, 10, 25, { stitches: 1, edges: "left" }]], { start: "neck" }));
    // 10 events in 25 rows: 5 of 3 rows, 5 of 2: after row 15 (6 cm down) 15 stitches.
    expect(outlines(shape)).toEqual([["5,10", "2.5,4", "0,0", "-5,0", "-5,4", "-5,10"]]);
  });

  it("runs from left to right where it starts at the side: the left edge of the work is above", () => {
    const shape = drawn(patternOf([[20, 10, 20, { stitches: 1, edges: "left" }]], { start: "side" }));
    // 20 rows are 8 cm across, every other row shapes: the upper edge falls straight from 10 to 5 cm.
    expect(outlines(shape)).toEqual([["-4,10", "4,5", "4,0", "-4,0"]]);
  });

  it("stands with its mirror image about its right edge", () => {
    // Half a front: 20 stitches even over 25 rows, then 5 decreases at the neck, on the right, in 10 rows.
    const half: Sections = [
      [20, 20, 25],
      [20, 15, 10, { stitches: 1, edges: "right" }],
    ];
    const shape = drawn(patternOf(half, { mirrored: true, made: 2 }));
    expect(outlines(shape)).toEqual([
      ["-10,0", "-10,10", "0,10", "0,0"],
      ["-10,10", "-10,14", "-2.5,14", "0,10"],
      ["10,0", "10,10", "0,10", "0,0"],
      ["10,10", "10,14", "2.5,14", "0,10"],
    ]);
    expect(shape.centreLine).toMatchObject({ from: { xCm: 0, yCm: 0 }, to: { xCm: 0, yCm: 14 } });
    // No edge lies along the middle: the halves are one cloth there.
    expect(shape.edges.filter(({ from, to }) => from.xCm === 0 && to.xCm === 0)).toEqual([]);
  });

  it("is mirrored about its last row where it starts at the side", () => {
    const shape = drawn(patternOf([[20, 10, 20, { stitches: 1, edges: "left" }]], { start: "side", mirrored: true }));
    expect(outlines(shape)).toEqual([
      ["-8,10", "0,5", "0,0", "-8,0"],
      ["8,10", "0,5", "0,0", "8,0"],
    ]);
  });
});

describe("measurement lines", () => {
  const measured = (change: Partial<PatternDocument> = {}) =>
    drawn(
      patternOf(
        [[20, 20, 50]],
        {},
        {
          measurements: [
            {
              id: "width",
              letter: "A",
              label: "Width",
              how: "Across.",
              toleranceCm: 1,
              girth: true,
              terms: [{ times: 2, count: "from-0" }],
              on: { piece: "piece", from: [0, 0.25], to: [1, 0.25] },
            },
            {
              id: "elsewhere",
              letter: "B",
              label: "Elsewhere",
              how: "Not shown.",
              toleranceCm: 1,
              terms: [{ times: 1, count: "from-0" }],
            },
          ],
          ...change,
        },
      ),
    ).lines;

  it("lie at their shares of the piece, and carry the finished measurement", () => {
    // 10 cm wide and 20 cm high; a quarter up is 5 cm. Twice the width is 20 cm, whatever the line's own length.
    expect(measured()).toEqual([
      { measurement: "width", letter: "A", label: "Width", from: { xCm: -5, yCm: 5 }, to: { xCm: 5, yCm: 5 }, cm: 20 },
    ]);
  });

  it("are drawn on a placeholder too, without a length if counts are missing", () => {
    expect(measured({ grading: {} })).toMatchObject([{ letter: "A", cm: null }]);
  });
});

it("covers, by the shoelace formula, what its stitches cover, however it is turned", () => {
  let ran = 0;
  const stitches = fc.integer({ min: 1, max: 150 });
  const section = fc.tuple(stitches, stitches, fc.integer({ min: 1, max: 120 }));
  const piece = fc.record({ start: fc.constantFrom("hem", "neck", "side"), mirrored: fc.boolean() });
  const settles = fc.record({
    across: fc.double({ min: 0.8, max: 1.2, noNaN: true }),
    along: fc.double({ min: 0.8, max: 1.2, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(section, { minLength: 1, maxLength: 4 }), piece, settles, (sections, turned, settled) => {
      ran += 1;
      const fabrics = [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 }, settles: settled }];
      const shape = drawn(
        patternOf(sections, { ...turned, made: 2 } satisfies Partial<PatternDocument1["pieces"][number]>, { fabrics }),
      );
      // Stitches worked (rows × (from + to) ÷ 2) times the size of one stitch; without shaping, edges are straight.
      const worked = sections.reduce((sum, [from, to, rows]) => sum + (rows * (from + to)) / 2, 0);
      const stitchCm2 = (settled.across / 2) * (settled.along / 2.5);
      const covered = shape.sections.reduce((sum, { outline }) => sum + area(outline), 0);
      expect(covered).toBeCloseTo(worked * stitchCm2 * (turned.mirrored ? 2 : 1), 6);
      for (const { section: index, outline } of shape.sections) {
        const [from = 0, to = 0] = sections[index] ?? [];
        const widths = endWidths(outline);
        expect(widths[0]).toBeCloseTo((from / 2) * settled.across, 9);
        expect(widths[1]).toBeCloseTo((to / 2) * settled.across, 9);
      }
    }),
    { numRuns: RUNS },
  );
  expect(ran).toBe(RUNS);
});

/** Of an unshaped outline: left start, left end, right end, right start. */
function endWidths([leftStart, leftEnd, rightEnd, rightStart]: readonly Point[]): number[] {
  const distance = (one?: Point, other?: Point) =>
    Math.hypot((one?.xCm ?? Number.NaN) - (other?.xCm ?? 0), (one?.yCm ?? 0) - (other?.yCm ?? 0));
  return [distance(leftStart, rightStart), distance(leftEnd, rightEnd)];
}
