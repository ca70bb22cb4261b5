import { describe, expect, it } from "vitest";
import { polyline } from "@/engine/garment-view/line";
import { smoothOutline } from "@/engine/garment-view/smooth-outline";
import { stepEnds } from "@/engine/garment-view/step-ends";
import { outlineGarment, workedGarment } from "@/engine/garment";
import { GARMENTS } from "../../garments";
import { areaOf, distance, distanceToUpright, everyGarment, followed } from "./followed";

/* A stitch is 0.5 cm wide, a row 0.4 cm high. All expected values are worked by hand. */

const ROW_CM = 0.4;
const MM = 0.1;

describe("the smoothed outline", () => {
  it("leaves a rectangle as it is", () => {
    const ring = [
      [-10, 0],
      [10, 0],
      [10, 30],
      [-10, 30],
    ] as const;
    const line = smoothOutline(ring, ROW_CM);
    expect(line && line.stretches.map(({ to, by, isCorner }) => ({ to, by, isCorner }))).toEqual(
      [
        [10, 0],
        [10, 30],
        [-10, 30],
        [-10, 0],
      ].map((to) => ({ to, by: null, isCorner: true })),
    );
  });

  it("draws a shoulder that is bound off in equal steps as one straight line", () => {
    // 3 times 5 stitches in every other row: 2.5 cm across and 0.8 cm up, from the shoulder's end to the neck.
    const shoulder = [
      [15, 20],
      [12.5, 20],
      [12.5, 20.8],
      [10, 20.8],
      [10, 21.6],
      [7.5, 21.6],
    ] as const;
    const ring = [[-15, 0], [15, 0], ...shoulder, [7.5, 16], [-15, 16]] as const;
    const line = smoothOutline(ring, ROW_CM);
    expect(line?.stretches.map(({ to, by }) => ({ to, by })).slice(1, 4)).toEqual([
      { to: [15, 20], by: null },
      { to: [7.5, 21.6], by: null },
      { to: [7.5, 16], by: null },
    ]);
  });

  it("keeps a square neck square, and rounds one that is shaped", () => {
    const square = smoothOutline(
      [
        [-20, 0],
        [20, 0],
        [20, 40],
        [8, 40],
        [8, 30],
        [-8, 30],
        [-8, 40],
        [-20, 40],
      ],
      ROW_CM,
    );
    expect(square?.stretches.every(({ by, isCorner }) => by === null && isCorner)).toBe(true);
    const slope = [
      [8, 32],
      [7.5, 32],
      [7.5, 31.2],
      [7, 31.2],
      [7, 30.4],
      [6, 30.4],
      [6, 30],
    ] as const;
    const round = smoothOutline(
      [[-20, 0], [20, 0], [20, 40], [8, 40], ...slope, [-6, 30], [-6, 40], [-20, 40]],
      ROW_CM,
    );
    const floorEnd = round?.stretches.find(({ to }) => to[0] === 6 && to[1] === 30);
    expect(floorEnd?.isCorner).toBe(false);
  });

  it.each(everyGarment())("goes through the upright end of every step within 1 mm: $name", ({ pattern, size }) => {
    let steps = 0;
    for (const { ring, rowCm } of workedGarment(pattern, size).pieces) {
      const line = smoothOutline(ring, rowCm);
      if (line === null) throw new Error("no outline");
      const places = followed(line);
      for (const { at, upright } of stepEnds(ring, rowCm)) {
        steps += 1;
        const offCm = Math.min(
          ...places.map((place) => (upright ? distanceToUpright(place, at[0], upright) : distance(place, at))),
        );
        expect(offCm).toBeLessThan(MM + 0.02);
      }
    }
    expect(steps).toBeGreaterThan(8);
  });

  it.each(everyGarment())(
    "has before smoothing each row as wide as its stitches, within 1 mm: $name",
    ({ pattern, size }) => {
      let rows = 0;
      for (const { steps } of outlineGarment(pattern, size).pieces)
        for (const { onNeedle, spans, circumferenceCm } of steps) {
          rows += 1;
          const stitches = onNeedle.reduce((sum, live) => sum + live, 0);
          const widthCm = circumferenceCm ?? spans.reduce((sum, [left, right]) => sum + right - left, 0);
          expect(Math.abs(widthCm - stitches * 0.5)).toBeLessThan(MM);
        }
      expect(rows).toBeGreaterThan(100);
    },
  );

  it.each(everyGarment())("keeps the area of the stepped outline within 5 %: $name", ({ pattern, size }) => {
    for (const { ring, rowCm } of workedGarment(pattern, size).pieces) {
      const [first = [0, 0], ...rest] = ring;
      const line = smoothOutline(ring, rowCm) ?? never();
      // A round yoke of four large steps differs most.
      expect(Math.abs(areaOf(line) / areaOf(polyline([first, ...rest, first])) - 1)).toBeLessThan(0.05);
    }
  });

  it("draws every garment without a fault", () => {
    for (const pattern of Object.values(GARMENTS))
      for (const { id } of pattern.sizes) expect(workedGarment(pattern, id).faults).toEqual([]);
  });
});

function never(): never {
  throw new Error("missing");
}
