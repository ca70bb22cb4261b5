import { describe, expect, it } from "vitest";
import { garmentSheet } from "../../../../src/features/patterns/drawing/print/garment-sheet";
import type { PatternDocument } from "../../../../src/engine/pattern";
import { patternDocument } from "../../../factories/pattern";

/** A front of 98 stitches by 100 rows, 49 by 40 cm in the small size and 59 by 44 cm in the large one. */
function front(label = "Front"): PatternDocument {
  const sections = [{ from: "width", to: "width", rows: "height" }];
  return patternDocument({ pieces: [{ id: "front", label, fabric: "main", made: 1, yarn: "wool", sections }] });
}

function sheet(pattern: PatternDocument, scale: "1" | "5" | "fit"): string {
  const [size] = pattern.sizes;
  if (size === undefined) throw new Error("no size");
  return garmentSheet({ pattern, size, unit: "cm", scale });
}

describe("the garment to print", () => {
  it("is as large as it is at 1:1, and a fifth of that at 1:5", () => {
    // 49 cm are 490 mm, and 98 mm.
    expect(widthsOf(sheet(front(), "1"))).toContain(490);
    expect(widthsOf(sheet(front(), "5"))).toContain(98);
  });

  it("is fitted to one page", () => {
    const fitted = sheet(front(), "fit");
    expect(fitted).toContain('width="210mm" height="297mm"');
    expect(Math.max(...widthsOf(fitted))).toBeLessThanOrEqual(186);
    expect(fitted).toMatch(/Scale 1:\d+(\.\d)?\./);
  });

  it("tells what it shows to those who do not see it, and writes people's words as words", () => {
    const drawn = sheet(front(`Front <script>`), "5");
    expect(drawn).toContain("49.0 cm (19 1/4 in) wide at the lower edge, 40.0 cm (15 3/4 in) high.");
    expect(drawn).not.toContain("<script");
  });
});

/** Widths of all closed outlines, mm. */
function widthsOf(svg: string): number[] {
  return Array.from(svg.matchAll(/ d="(M[^"]*Z)"/g), ([, d = ""]) => {
    const xs = Array.from(d.matchAll(/(-?[\d.]+),-?[\d.]+/g), ([, x]) => Number(x));
    return Math.round(10 * (Math.max(...xs) - Math.min(...xs))) / 10;
  });
}
