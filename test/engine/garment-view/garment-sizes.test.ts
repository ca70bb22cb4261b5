import { describe, expect, it } from "vitest";
import { outlineGarment } from "@/engine/garment";
import { viewFacts } from "@/engine/garment-view";
import { GARMENTS } from "../../garments";
import { lengthOf, pieceIn } from "./followed";

/*
 * Each of the eight garments in its smallest size against numbers worked by hand. A stitch is 0.5 cm × 0.4 cm = 0.2 cm²; areas are
 * sums of the live stitches of all rows.
 */

function areaOfPiece(garment: string, piece: string): number {
  const found = outlineGarment(patternOf(garment), "small").pieces.find((one) => one.piece === piece);
  if (found === undefined) throw new Error(`no piece ${piece}`);
  return found.areaCm2;
}

function patternOf(garment: string) {
  const pattern = GARMENTS[garment];
  if (pattern === undefined) throw new Error(`no garment ${garment}`);
  return pattern;
}

function sizeOf(garment: string, piece: string): [width: number, height: number] {
  const { shapes } = pieceIn(patternOf(garment), "small", piece);
  const ends = shapes.flatMap(({ fabric }) => fabric.stretches.map(({ to }) => to));
  const across = (axis: 0 | 1) => {
    const values = ends.map((end) => end[axis]);
    return Math.round((Math.max(...values) - Math.min(...values)) * 1000) / 1000;
  };
  return [across(0), across(1)];
}

function perimeterOf(garment: string, piece: string): number {
  return pieceIn(patternOf(garment), "small", piece).shapes.reduce((sum, { fabric }) => sum + lengthOf(fabric), 0);
}

describe("sizes, areas and lengths of the eight garments", () => {
  it("drop-shoulder pullover", () => {
    // 96 stitches; 15 + 130 + 4 rows. Cuff 44 stitches, 40 more to the top; 15 + 112 rows.
    expect(sizeOf("drop-shoulder", "back")).toEqual([48, 59.6]);
    expect(sizeOf("drop-shoulder", "sleeve")).toEqual([42, 50.8]);
    // 96 × 145 = 13 920; each side 34 + 33 + 33 + 32 = 132. (13 920 + 264) × 0.2.
    expect(areaOfPiece("drop-shoulder", "back")).toBeCloseTo(2836.8, 6);
    // 44 × 19 = 836; 5 rows each of 46, 48 … 82: 5 × 19 × 64 = 6080; 84 × 13 = 1092; 8008 × 0.2.
    expect(areaOfPiece("drop-shoulder", "sleeve")).toBeCloseTo(1601.6, 6);
    // Hem 48, sides 2 × 59.6, shoulders 2 × 16, floor of the neck 14, its slopes √(1² + 1.6²) = 1.887 each.
    expect(perimeterOf("drop-shoulder", "back")).toBeCloseTo(48 + 119.2 + 32 + 14 + 2 * 1.887, 1);
  });

  it("set-in pullover", () => {
    // 94 stitches. Sleeve: 44 + 24 = 68 at its widest.
    expect(sizeOf("set-in", "front")[0]).toBe(47);
    expect(sizeOf("set-in", "sleeve")[0]).toBe(34);
    // 44 × 20 = 880; 6 rows each of 46 … 66: 6 × 11 × 56 = 3696; 68 × 29 = 1972; bound off 64 + 60 + 58 + 56 = 238;
    // 56 + 2 × (54 + 52 … + 26) + 24 = 1280; 22 + 20 + 18 + 16 = 76. In all 8142 × 0.2.
    expect(areaOfPiece("set-in", "sleeve")).toBeCloseTo(1628.4, 6);
  });

  it("raglan from the neck", () => {
    // 88 + 2 × (96 + 104 … + 256) + 264 = 88 + 2 × 21 × 176 + 264 = 7744, both layers.
    expect(areaOfPiece("raglan", "yoke")).toBeCloseTo(1548.8, 6);
    // 264 × 0.5 = 132 cm around, 66 flat; 44 rounds. The body 168 stitches around, 42 cm flat, 95 rounds.
    expect(sizeOf("raglan", "yoke")).toEqual([66, 17.6]);
    expect(sizeOf("raglan", "body")).toEqual([42, 38]);
    expect(perimeterOf("raglan", "body")).toBeCloseTo(160, 6);
    // A trapezoid: 66 and, at the neck, 88 × 0.25 = 22; slanted sides √(22² + 17.6²) = 28.174.
    expect(perimeterOf("raglan", "yoke")).toBeCloseTo(66 + 22 + 2 * 28.174, 1);
  });

  it("round yoke, by its circumference", () => {
    const yoke = outlineGarment(patternOf("round-yoke"), "small").pieces.find(({ piece }) => piece === "yoke");
    // Body 176 − 20, sleeves 2 × (64 − 10): 264 stitches, 132 cm around; less 4 × 43: 92, 46 cm.
    expect(yoke?.steps[0]?.circumferenceCm).toBeCloseTo(132, 9);
    expect(yoke?.steps.at(-1)?.circumferenceCm).toBeCloseTo(46, 9);
    // 264 × 11 + 221 × 11 + 178 × 11 + 135 × 11 + 92 × 6 = 9330, both layers.
    expect(areaOfPiece("round-yoke", "yoke")).toBeCloseTo(1866, 6);
    expect(sizeOf("round-yoke", "yoke")).toEqual([66, 20]);
    // 44 cm flat, 100 rounds.
    expect(perimeterOf("round-yoke", "body")).toBeCloseTo(2 * (44 + 40), 6);
  });

  it("vest", () => {
    // 90 stitches. To the underarm 15 + 85 rows.
    expect(sizeOf("vest", "front")[0]).toBe(45);
    const facts = viewFacts(pieceIn(patternOf("vest"), "small", "front"))[0]?.parts;
    expect(facts?.find(({ says }) => says === "to the underarm")?.cm).toBeCloseTo(40, 1);
    // The neck is 32 stitches wide.
    expect(facts?.find(({ says }) => says === "across the neck")?.cm).toBeCloseTo(16, 6);
  });

  it("V-neck cardigan", () => {
    // 46 × 100 = 4600; row 101 even, then 5 bound off: 46 + 41 = 87. Of the next 50 rows: 41, 2 × (39 + 37 + 35 + 33 + 31 + 29 +
    // 28 + 27) = 518, 4 × (26 + 25 … + 19) = 720, 18: 1297. Shoulder 18 + 12 + 12 + 6 = 48. In all 6032 × 0.2.
    expect(areaOfPiece("cardigan", "front")).toBeCloseTo(1206.4, 6);
    // 100 + 2 + 50 + 4 rows.
    expect(sizeOf("cardigan", "front")).toEqual([23, 62.4]);
  });

  it("mesh tee, worked sideways", () => {
    // Rows: 4 + 2 + 28 + 4 + 38 + 4 + 28 + 2 + 3 = 113, 45.2 cm wide; 66 + 36 stitches, 51 cm high.
    expect(sizeOf("mesh-tee", "back")).toEqual([45.2, 51]);
    // 66 × 4 + 66 + 102 + 102 × 28 + 102 + 98 + 98 + 97 + 97 × 38 + 97 + 98 + 98 + 102 + 102 × 28 + 102 + 66 + 66 × 3 = 10 986.
    expect(areaOfPiece("mesh-tee", "back")).toBeCloseTo(2197.2, 6);
    // 36 cm × 9.6 cm.
    expect(perimeterOf("mesh-tee", "sleeve")).toBeCloseTo(91.2, 6);
  });

  it("tank with wide shaped straps", () => {
    expect(sizeOf("tank", "front")[0]).toBe(45);
    // A strap has 23 − 3 × 2 − 3 + 4 = 18 stitches, 9 cm, before its outer half is bound off.
    const rows = outlineGarment(patternOf("tank"), "small").pieces[0]?.steps ?? [];
    expect(rows.some(({ onNeedle }) => onNeedle.length === 2 && onNeedle.every((stitches) => stitches === 18))).toBe(
      true,
    );
  });
});
