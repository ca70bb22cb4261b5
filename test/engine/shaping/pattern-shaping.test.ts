import { describe, expect, it } from "vitest";
import type { PatternDocument } from "@/engine/pattern";
import { patternShaping } from "@/engine/shaping";
import { patternDocument } from "../../factories/pattern";

const MAIN = { id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 } } as const;

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

function saysOf(pattern: PatternDocument): string[] {
  return patternShaping(pattern).flatMap(({ sections }) =>
    sections.flatMap(({ sizes }) => sizes.map(({ size, message }) => `${size}: ${message}`)),
  );
}

describe("the shaping of a pattern", () => {
  it("is planned for every section in every size", () => {
    // small: 12 ÷ 2 = 6 events, 36 ÷ 6 = 6. large: 18 ÷ 2 = 9 events, 36 ÷ 9 = 4.
    expect(saysOf(sleeve())).toEqual([
      "small: Decrease 1 stitch each side every 6th row 6 times.",
      "large: Decrease 1 stitch each side every 4th row 9 times.",
    ]);
  });

  it.each(["round", "turned rounds"] as const)("speaks of rounds where the fabric is worked in %ss", (worked) => {
    expect(saysOf(sleeve({ fabrics: [{ ...MAIN, worked }] }))[0]).toBe(
      "small: Decrease 1 stitch each side every 6th round 6 times.",
    );
  });

  it("has a fault at its size and leaves the others alone", () => {
    const grading = { ...sleeve().grading, cuff: { small: 48, large: 53 } };
    expect(saysOf(sleeve({ grading }))).toEqual([
      "small: Decrease 1 stitch each side every 6th row 6 times.",
      "large: From 72 to 53 stitches is 19 fewer, and 2 go at a time. Make the difference a multiple of 2, or shape another number of stitches at a time.",
    ]);
  });

  it("names the counts that have no number yet", () => {
    const { top } = sleeve().grading ?? {};
    expect(saysOf(sleeve({ grading: { ...(top && { top }) } }))[0]).toBe(
      "small: “Cuff” and “Sleeve rows” have no number yet. Enter them to see how this is worked.",
    );
  });
});
