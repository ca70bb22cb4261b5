import { describe, expect, it } from "vitest";
import { chooseSizes } from "../../../../src/features/patterns/drawing/choose-sizes";
import { printSheet } from "../../../../src/features/patterns/drawing/print/print-sheet";
import type { PatternDocument } from "../../../../src/engine/pattern";
import { patternDocument } from "../../../factories/pattern";

/** One piece of 98 stitches by 100 rows, 49 by 40 cm in the small size and 59 by 44 cm in the large one. */
function onePiece(label = "Back"): PatternDocument {
  const sections = [{ from: "width", to: "width", rows: "height" }];
  return patternDocument({ pieces: [{ id: "back", label, fabric: "main", made: 1, yarn: "wool", sections }] });
}

function sheet(pattern: PatternDocument, asked: string): string {
  const sizes = chooseSizes(pattern, asked) ?? [];
  return printSheet({ pattern, sizes, isAllSizes: asked === "all", unit: "cm" });
}

describe("the drawing to print", () => {
  it("states the largest scale at which the widest size fits, and keeps it in every size", () => {
    // 59 cm at 1:2 are 295 mm, at 1:5 118 mm; the sheet has 186 mm. 49 cm are then 98 mm, 40 cm 80 mm.
    const small = sheet(onePiece(), "small");
    expect(small).toContain("Scale 1:5. The bar shows 20 cm of the garment; printed at full size it is 40 mm long.");
    expect(small).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
    const edge = / d="(M[^"]*Z)"/.exec(small)?.[1] ?? "";
    const ends = Array.from(edge.matchAll(/(-?[\d.]+),(-?[\d.]+)/g), ([, x, y]) => [Number(x), Number(y)] as const);
    const across = (axis: 0 | 1) =>
      Math.max(...ends.map((end) => end[axis])) - Math.min(...ends.map((end) => end[axis]));
    expect(across(0)).toBeCloseTo(98, 1);
    expect(across(1)).toBeCloseTo(80, 1);
  });

  it("names every size where all are asked for", () => {
    const all = sheet(onePiece(), "all");
    expect(all).toContain("S: 49.0 cm wide, 40.0 cm high.");
    expect(all).toContain("L: 59.0 cm wide, 44.0 cm high.");
  });

  it("writes people's words as words, whatever they hold", () => {
    const drawn = sheet(onePiece(`</text><script>alert("x")</script> & 'so' \u0007 on`), "small");
    expect(drawn).not.toContain("<script");
    expect(drawn).not.toContain("\u0007");
    expect(drawn).toContain("&lt;/text&gt;&lt;script&gt;");
    expect(drawn).toContain("&amp;");
    expect(drawn).toContain("&apos;so&apos;");
  });

  it("is longer than a sheet where there is more on it", () => {
    const sections = [{ from: "width", to: "width", rows: "height" }];
    const pieces = Array.from({ length: 12 }, (_, index) => ({
      ...{ id: `piece-${index}`, label: "Back", fabric: "main", made: 1, yarn: "wool", sections },
    }));
    const many = sheet(patternDocument({ pieces }), "small");
    expect(Number(/height="(\d+)mm"/.exec(many)?.[1])).toBeGreaterThan(297);
  });
});
