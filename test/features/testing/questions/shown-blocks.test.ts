import { expect, it } from "vitest";
import { shownBlocks } from "../../../../src/features/testing/questions/shown-blocks";

const TEXT = "Cast on 98 (118) stitches, then work 5 rows.";
const LARGE = { count: 2, index: 1 };

function wordsOf(shown?: "all" | "own") {
  return shownBlocks(TEXT, LARGE, shown).map(({ pieces }) => pieces);
}

it("shows the numbers of all sizes as published, with the reader's own marked", () => {
  expect(wordsOf()).toEqual([["Cast on ", { sizes: ["98 (", ["118"], ")"] }, " stitches, then work 5 rows."]]);
  expect(wordsOf("all")).toEqual(wordsOf());
});

it("shows only the reader's own number where they choose so", () => {
  expect(wordsOf("own")).toEqual([["Cast on ", { sizes: [["118"]] }, " stitches, then work 5 rows."]]);
});
