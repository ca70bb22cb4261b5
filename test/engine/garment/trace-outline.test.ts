import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { traceOutline, type Rectangle } from "@/engine/garment/trace-outline";
import { areaWithin } from "./outlined";

const RUNS = 500;
const GRID = 7;
const ran = { apart: 0, open: 0 };

afterAll(() => {
  console.log("outlines", ran);
  expect(Math.min(...Object.values(ran))).toBeGreaterThan(RUNS / 50);
});

function rectangle(leftCm: number, bottomCm: number, rightCm: number, topCm: number): Rectangle {
  return { leftCm, rightCm, bottomCm, topCm };
}

describe("fabric that touches at a corner only", () => {
  const small = rectangle(0, 0, 1, 1);

  it.each([
    ["up to the right", rectangle(1, 1, 3, 2), "1,1 3,1 3,2 1,2"],
    ["up to the left", rectangle(-2, 1, 0, 2), "-2,1 0,1 0,2 -2,2"],
  ])("is apart, and the larger is outlined: %s", (_, large, points) => {
    expect(traceOutline([small, large]).join(" ")).toBe(points);
  });
});

it("is the same to the last bit whether rows come one above the other or in any other order", () => {
  let traced = 0;
  const row = fc.tuple(
    fc.double({ min: 0, max: 20, noNaN: true }),
    fc.double({ min: 0.01, max: 15, noNaN: true }),
    fc.double({ min: 0.3, max: 4, noNaN: true }),
    fc.constantFrom(0, 1e-12, -1e-12),
  );
  fc.assert(
    fc.property(fc.array(row, { minLength: 2, maxLength: 30 }), (rows) => {
      let height = 0;
      const stacked = rows.map(([leftCm, widthCm, heightCm, offCm]) => {
        const bottom = height + offCm;
        height = bottom + heightCm;
        return rectangle(leftCm, bottom, leftCm + widthCm, height);
      });
      const outline = traceOutline(stacked);
      expect(traceOutline([...stacked.slice(1), ...stacked.slice(0, 1)])).toEqual(outline);
      if (outline.length > 4) traced += 1;
    }),
    { seed: Number(process.env.SEED), numRuns: RUNS },
  );
  expect(traced).toBeGreaterThan(RUNS / 4);
});

it("goes about the most fabric that hangs together, openings filled, as counted cell by cell", () => {
  const start = fc.integer({ min: 0, max: GRID - 1 });
  const bars = fc.constantFrom([1, 1], [2, 2], [1, 5], [5, 1]);
  const drawn = fc
    .tuple(start, start, bars)
    .map(([x, y, [width = 1, height = 1]]) => rectangle(x, y, Math.min(x + width, GRID), Math.min(y + height, GRID)));
  fc.assert(
    fc.property(fc.array(drawn, { minLength: 4, maxLength: 12 }), (rectangles) => {
      const outline = traceOutline(rectangles);
      const areas = filledAreas(rectangles);
      expect(areaWithin([...outline, ...outline.slice(0, 1)])).toBe(Math.max(...areas.map(({ filled }) => filled)));
      if (areas.length > 1) ran.apart += 1;
      if (areas.some(({ filled, cells }) => filled > cells)) ran.open += 1;
    }),
    { numRuns: RUNS },
  );
});

/** Cells of each fabric that hangs together edge to edge, and how many it has with those that cannot be left past its corners. */
function filledAreas(rectangles: readonly Rectangle[]): { cells: number; filled: number }[] {
  const isCovered = (x: number, y: number) =>
    rectangles.some((r) => x >= r.leftCm && x < r.rightCm && y >= r.bottomCm && y < r.topCm);
  const board = Array.from(
    { length: (GRID + 2) ** 2 },
    (_, index) => [(index % (GRID + 2)) - 1, Math.floor(index / (GRID + 2)) - 1] as const,
  );
  const seen = new Set<string>();
  return board.flatMap((cell) => {
    if (!isCovered(...cell) || seen.has(cell.join())) return [];
    const fabric = reached(cell, (x, y) => isCovered(x, y), 1);
    for (const key of fabric) seen.add(key);
    const isFree = (x: number, y: number) => Math.min(x, y) >= -1 && Math.max(x, y) <= GRID && !fabric.has(`${x},${y}`);
    return [{ cells: fabric.size, filled: board.length - reached([-1, -1], isFree, 2).size }];
  });
}

/** Cells that are reached from one in steps along an axis, or, where `most` is 2, also across corners. */
function reached(from: readonly [number, number], isOpen: (x: number, y: number) => boolean, most: 1 | 2): Set<string> {
  const found = new Set([from.join()]);
  const open = [from];
  for (let cell = open.pop(); cell !== undefined; cell = open.pop())
    for (const dx of [-1, 0, 1])
      for (const dy of [-1, 0, 1]) {
        const [x, y] = [cell[0] + dx, cell[1] + dy];
        if (Math.abs(dx) + Math.abs(dy) > most || found.has(`${x},${y}`) || !isOpen(x, y)) continue;
        found.add(`${x},${y}`);
        open.push([x, y]);
      }
  return found;
}
