import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { garmentView, viewFacts, withRoom, type Box, type Place } from "@/engine/garment-view";
import { placeLetters } from "@/engine/garment-view/place-letters";
import { GARMENTS } from "../../garments";
import { piecedPattern } from "../../factories/pieced-pattern";
import { garmentPattern } from "../../factories/garment-pattern";
import { distance, everyGarment, followed, viewsOf } from "./followed";

/* A stitch is 0.5 cm wide, a row 0.4 cm high. All expected values are worked by hand. */

const NEAR_CM = 0.01;

describe("the garment view", () => {
  it.each(everyGarment())("puts every garment together, within its box, letters apart: $name", ({ pattern, size }) => {
    const { garment, all } = viewsOf(pattern, size);
    expect(garment).not.toBeNull();
    for (const { shapes, tapes, box } of all) {
      for (const { fabric, edges } of shapes)
        for (const place of [...edges, fabric].flatMap(followed)) expect(isIn(place, box)).toBe(true);
      for (const { from, to, letterAt } of tapes)
        for (const place of [from, to, letterAt]) expect(isIn(place, box)).toBe(true);
      const letters = tapes.map(({ letterAt }) => letterAt);
      for (const [index, one] of letters.entries())
        for (const other of letters.slice(0, index)) expect(distance(one, other)).toBeGreaterThan(0.5);
    }
  });

  it("lays the sleeves of a drop shoulder level, and as wide as half their top", () => {
    const { garment } = viewsOf(GARMENTS["drop-shoulder"] ?? missing(), "small");
    const sleeve = garment?.shapes.find(({ piece }) => piece === "sleeve") ?? missing();
    const ends = sleeve.edges.flatMap(({ from, stretches }) => [from, ...stretches.map(({ to }) => to)]);
    // Body 48 cm wide, shoulders at 59.6; half of the sleeve's 42 is 21, its cuff 11; 50.8 long.
    expect(Math.max(...ends.map(([x]) => x))).toBeCloseTo(24 + 50.8, 6);
    expect(Math.max(...ends.map(([, y]) => y))).toBeCloseTo(59.6, 6);
    expect(Math.min(...ends.map(([, y]) => y))).toBeCloseTo(59.6 - 21, 6);
  });

  it("lays a raglan's line of the sleeve on that of the body", () => {
    const { garment } = viewsOf(GARMENTS.raglan ?? missing(), "small");
    const sleeve = garment?.shapes.find(({ piece }) => piece === "sleeve") ?? missing();
    const last = sleeve.edges[0]?.stretches.at(-1)?.to ?? missing();
    // Body 95 rounds high, yoke 44: 38 + 17.6. At the neck the front has 32 of 88 stitches, half of it 8 cm.
    expect(distance(last, [8, 55.6])).toBeLessThan(1.5);
  });

  it("ends a round yoke's sleeve as far from the neck as the yoke is deep", () => {
    const { garment } = viewsOf(GARMENTS["round-yoke"] ?? missing(), "small");
    const fold = garment?.joins[0]?.stretches[0]?.to ?? missing();
    // Body 100 rounds, 40 cm; yoke 50 rounds, 20 cm; neck 92 stitches, half of the half 11.5 cm. Sleeve 64 stitches, 16 cm folded;
    // the body's corner 22 cm from the middle.
    expect(distance(fold, [11.5, 60])).toBeCloseTo(20, 6);
    expect(distance(fold, [22, 40])).toBeCloseTo(16, 6);
  });

  it("lays both fronts of a cardigan on its back, outer sides together", () => {
    const { garment } = viewsOf(GARMENTS.cardigan ?? missing(), "small");
    const fronts = garment?.shapes.filter(({ piece }) => piece === "front") ?? [];
    const spans = fronts.map(({ fabric }) => {
      const xs = fabric.stretches.map(({ to }) => to[0]);
      return [Math.min(...xs), Math.max(...xs)];
    });
    // Back 96 stitches, 48 cm; each front 46, 23 cm: 2 cm between them.
    expect(spans.map((span) => span.map((x) => Math.round(x * 100) / 100))).toEqual([
      [-24, -1],
      [1, 24],
    ]);
    expect(garment?.shapes.find(({ piece }) => piece === "back")?.isBehind).toBe(true);
  });

  it("says nothing of how pieces are put together that it does not know", () => {
    const pattern = garmentPattern({
      pieces: [{ id: "square", label: "Square" }],
      steps: [
        { in: "square", do: "start", how: "cast-on", stitches: 20, worked: "flat" },
        { in: "square", do: "work", rows: 20 },
        { in: "square", do: "end", how: "bind-off", edge: "top" },
      ],
    });
    const view = garmentView(pattern, {}, "small");
    expect(view.garment).toBeNull();
    expect(view.pieces).toHaveLength(1);
  });

  it("does not put together sections of format 1, which do not say how pieces meet", () => {
    const pattern = piecedPattern();
    const view = garmentView(pattern, pattern.grading ?? {}, "small");
    expect(view.garment).toBeNull();
    // 70 stitches of 22 to 10 cm, 120 rows of 30.
    const sleeve = view.pieces.find(({ piece }) => piece === "sleeve") ?? missing();
    expect(viewFacts(sleeve)[0]?.parts.map(({ cm }) => Math.round(cm * 10) / 10)).toEqual([31.8, 40]);
  });

  it("draws each piece as far as it can be worked where a count has no number, and puts nothing together", () => {
    const pattern = GARMENTS.vest ?? missing();
    const { underarm: _underarm, ...grading } = pattern.grading ?? {};
    const view = garmentView(pattern, grading, "small");
    expect(view.garment).toBeNull();
    // 90 stitches; 15 + 85 rows up to the armhole.
    const boxes = view.pieces.map(({ shows }) => shows[0]?.box);
    const half = { leftCm: -22.5, rightCm: 22.5, bottomCm: 0, topCm: 40 };
    expect(boxes).toEqual([half, half]);
    expect(view.pieces[0]?.tapes.map(({ letter }) => letter)).not.toEqual([]);
  });

  it("gives letters as much room as what stands below them takes", () => {
    const { garment } = viewsOf(GARMENTS["set-in"] ?? missing(), "small");
    const within = (garment ?? missing()).box;
    const { tapes, box } = withRoom(garment ?? missing(), {
      ...{ fullWidthCm: 280, within },
      room: { width: 40, height: 30 },
    });
    expect(tapes.length).toBeGreaterThan(2);
    for (const [index, { letterAt }] of tapes.entries()) {
      expect(isIn(letterAt, box)).toBe(true);
      for (const { letterAt: other } of tapes.slice(0, index))
        expect(Math.abs(letterAt[0] - other[0]) >= 40 - 1e-9 || Math.abs(letterAt[1] - other[1]) >= 30 - 1e-9).toBe(
          true,
        );
    }
  });
});

describe("letters of tapes", () => {
  const box: Box = { leftCm: 0, rightCm: 60, bottomCm: 0, topCm: 40 };
  const letter = { widthCm: 4, heightCm: 3 };
  const place = fc.tuple(fc.double({ min: 0, max: 60, noNaN: true }), fc.double({ min: 0, max: 40, noNaN: true }));

  it("never overlap, and lie within the box that is returned", () => {
    let seen = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 8, maxLength: 60 }), (ends) => {
        const bare = ends.map(([from, to], index) => ({
          ...{ measurement: `m${index}`, letter: "A", label: "", cm: null, from, to },
        }));
        const placed = placeLetters(bare, { box, letter });
        for (const [
          index,
          {
            letterAt: [x, y],
          },
        ] of placed.tapes.entries()) {
          seen += 1;
          expect(isIn([x - 2, y - 1.5], placed.box) && isIn([x + 2, y + 1.5], placed.box)).toBe(true);
          for (const { letterAt } of placed.tapes.slice(0, index))
            expect(Math.abs(letterAt[0] - x) >= 4 - 1e-9 || Math.abs(letterAt[1] - y) >= 3 - 1e-9).toBe(true);
        }
      }),
      { seed: Number(process.env.SEED), numRuns: 100 },
    );
    expect(seen).toBeGreaterThan(500);
  });

  it("moves apart tapes that would lie on each other", () => {
    const tape = { measurement: "a", letter: "A", label: "", cm: null, from: [10, 20] as Place, to: [50, 20] as Place };
    const { tapes } = placeLetters([tape, { ...tape, measurement: "b" }], { box, letter });
    expect(tapes.map(({ from }) => from[1])).toEqual([20, 23]);
  });
});

function isIn([x, y]: Place, { leftCm, rightCm, bottomCm, topCm }: Box): boolean {
  return x >= leftCm - NEAR_CM && x <= rightCm + NEAR_CM && y >= bottomCm - NEAR_CM && y <= topCm + NEAR_CM;
}

function missing(): never {
  throw new Error("missing");
}
