import { describe, expect, it } from "vitest";
import { sectionText } from "@/engine/garment";
import type { PatternDocument } from "@/engine/pattern";
import { patternDocument } from "../../factories/pattern";

/** One tapering sleeve in two sizes: 60 → 48 over 36 rows, 72 → 54 over 36 rows. */
function sleeve(change: Partial<PatternDocument> = {}): PatternDocument {
  return patternDocument({
    counts: [
      { id: "top", label: "Top", fabric: "main", direction: "stitches" },
      { id: "cuff", label: "Cuff", fabric: "main", direction: "stitches" },
      { id: "rows", label: "Sleeve rows", fabric: "main", direction: "rows" },
    ],
    pieces: [
      {
        id: "sleeve",
        label: "Sleeve",
        fabric: "main",
        made: 2,
        yarn: "wool",
        sections: [{ from: "top", to: "cuff", rows: "rows", shaping: { stitches: 1, edges: "both" } }],
      },
    ],
    measurements: [],
    grading: { top: { small: 60, large: 72 }, cuff: { small: 48, large: 54 }, rows: { small: 36, large: 36 } },
    ...change,
  });
}

function saysOf(pattern: PatternDocument, noun: "row" | "round" = "row"): (string | null)[] {
  return pattern.garment.steps.flatMap((step) =>
    step.do === "section" ? pattern.sizes.map(({ id }) => sectionText(pattern, { step, noun, size: id })) : [],
  );
}

describe("the shaping of a section of format 1", () => {
  it("is told in every size, in rows or rounds", () => {
    // small: 12 ÷ 2 = 6 events, 36 ÷ 6 = 6. large: 18 ÷ 2 = 9 events, 36 ÷ 9 = 4.
    expect(saysOf(sleeve())).toEqual([
      "Decrease 1 stitch each side every 6th row 6 times.",
      "Decrease 1 stitch each side every 4th row 9 times.",
    ]);
    expect(saysOf(sleeve(), "round")[0]).toBe("Decrease 1 stitch each side every 6th round 6 times.");
  });

  it("is not told where it does not come out, or a count has no number", () => {
    const grading = { ...sleeve().grading, cuff: { small: 48, large: 53 } };
    expect(saysOf(sleeve({ grading }))).toEqual(["Decrease 1 stitch each side every 6th row 6 times.", null]);
    expect(saysOf(sleeve({ grading: { ...grading, rows: { large: 36 } } }))).toEqual([null, null]);
  });
});
