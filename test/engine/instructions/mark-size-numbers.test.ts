import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { markSizeNumbers } from "@/engine/instructions";
import { saltmarshInstructions } from "../../../prisma/demo/saltmarsh-instructions";
import { SIZES } from "../../../prisma/demo/saltmarsh-numbers";

const own = (text: string, sizeCount: number, index: number) =>
  markSizeNumbers(text, sizeCount, index).flatMap((segment) => (segment.kind === "sizes" ? [segment.own] : []));

const joined = (text: string, sizeCount: number, index: number) =>
  markSizeNumbers(text, sizeCount, index)
    .map((segment) => (segment.kind === "sizes" ? segment.parts.map((part) => part.text).join("") : segment.text))
    .join("");

describe("markSizeNumbers", () => {
  it.each([
    ["Cast on 176 (192, 212, 232) stitches", 4, 2, "212"],
    ["Cast on 176 (192: 212: 232) stitches", 4, 0, "176"],
    ["Cast on 176 [192, 212, 232] stitches", 4, 3, "232"],
    ["80 (84, 88) (92, 96, 100)", 6, 4, "96"],
    ["80 (84, 88) [92, 96, 100]", 6, 5, "100"],
    ["80 (84,88,92)", 4, 1, "84"],
    ["80 (84 88 92)", 4, 3, "92"],
    ["until it measures 38,5 (39,5, 40) cm", 3, 1, "39,5"],
    ["until it measures 38.5 (39.5, 40)cm", 3, 2, "40"],
    ["30 cm (32 cm, 34 cm)", 3, 1, "32 cm"],
    ["12 1/2 (13 1/4, 14) in", 3, 1, "13 1/4"],
    ['12½ (13¼, 14)"', 3, 1, "13¼"],
    ["knit 2 (3,\n4) times", 3, 2, "4"],
    ["18 (20, 22) (see the chart)", 3, 2, "22"],
    ["k2 (3, 4)", 3, 0, "2"],
  ])("finds in “%s” for %i sizes the one at %i", (text, sizeCount, index, number) => {
    expect(own(text, sizeCount, index)).toEqual([number]);
    expect(joined(text, sizeCount, index)).toBe(text);
  });

  it.each([["–"], ["-"], ["—"], ["0"]])("reports that a size has no number where %s is written", (none) => {
    expect(markSizeNumbers(`${none} (2, 4) times`, 3, 0)[0]).toMatchObject({ kind: "sizes", isNone: true });
    expect(markSizeNumbers(`${none} (2, 4) times`, 3, 1)[0]).toMatchObject({ kind: "sizes", own: "2", isNone: false });
  });

  it("marks a list of the wrong length as unsure, with its length", () => {
    expect(markSizeNumbers("Knit 10 (12, 14) rows", 4, 0)).toEqual([
      { kind: "text", text: "Knit " },
      { kind: "unsure", text: "10 (12, 14)", numbers: 3 },
      { kind: "text", text: " rows" },
    ]);
  });

  it.each([["10 cm (4 in) wide"], ["row 5 (right side)"], ["12 (see page 3)"], ["(20, 22)"], ["knit 3"], [""]])(
    "leaves “%s” alone",
    (text) => {
      expect(markSizeNumbers(text, 2, 0).filter(({ kind }) => kind !== "text")).toEqual([]);
    },
  );

  it("marks nothing for a pattern of one size, and knows no size beyond the last", () => {
    expect(own("10 (12, 14)", 1, 0)).toEqual([]);
    expect(() => markSizeNumbers("10", 2, 2)).toThrow(RangeError);
  });

  it("finds every list of the demonstration, none of another count", () => {
    const count = SIZES.length;
    const segments = markSizeNumbers(saltmarshInstructions, count, count - 1);
    expect(segments.filter(({ kind }) => kind === "unsure")).toEqual([]);
    expect(segments.filter(({ kind }) => kind === "sizes")).toHaveLength(17);
    // By hand: size 5X, (152 + 10) × 2.2 = 356.4, the nearest multiple of 4 is 356.
    expect(own(saltmarshInstructions, count, count - 1)[0]).toBe("356");
  });

  it("loses no character of any text, and is quick with the worst", () => {
    let lists = 0;
    const piece = fc.oneof(
      fc.constantFrom("1", "22", "3,5", " ", "(", ")", "[", "]", ", ", ",", ":", " 1/2", "½", "-", "cm", "in", "x"),
      fc.constantFrom("10 (12, 14)", "4 (5)", "8 [9: 10]"),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), fc.integer({ min: 1, max: 4 }), (pieces, sizeCount) => {
        const text = pieces.join("");
        expect(joined(text, sizeCount, 0)).toBe(text);
        lists += own(text, sizeCount, 0).length;
      }),
      { numRuns: 500 },
    );
    expect(lists).toBeGreaterThan(50);
    for (const worst of ["1 (", "1,", "1 ", "(1", "1 (1) ", "(1) ", "½ "].map((part) => `1 ${part.repeat(20_000)}`))
      expect(joined(worst, 3, 0)).toBe(worst);
  });
});
