import { describe, expect, it } from "vitest";
import { readInstructions } from "@/engine/instructions";
import { groupByPlace, surroundingsOf } from "@/features/testing/questions/group-by-place";
import { blockOfKey, placeKey } from "@/features/testing/questions/place-key";
import { placeQuery } from "@/features/testing/questions/place-query";
import { textParts } from "@/features/testing/questions/text-parts";

const FIRST =
  "# Body\n\nCast on 98 (118) stitches.\n\nWork the rib until it measures 5 cm.\n\nFold the brim under and sew it.\n";
/** A line before all, another number, and the brim gone. */
const SECOND = "Read this first.\n\n# Body\n\nCast on 98 (120) stitches.\n\nWork the rib until it measures 5 cm.\n";

const noted = (block: number, name: string) => {
  const found = readInstructions(FIRST)[block];
  if (found === undefined) throw new Error("no such block");
  return { place: found.place, name };
};

describe("what is said of a text, by place", () => {
  it("stands in the order of the text, what is said of one place together", () => {
    const groups = groupByPlace(FIRST, [noted(2, "rib"), noted(1, "a"), noted(1, "b")]);
    expect(groups.map((group) => group.notes.map(({ name }) => name))).toEqual([["a", "b"], ["rib"]]);
    expect(groups.map(({ block }) => block?.place.block)).toEqual([1, 2]);
  });

  it("follows its place into a later text, and stands last where that is gone", () => {
    const groups = groupByPlace(SECOND, [noted(3, "brim"), noted(2, "rib"), noted(1, "cast on")]);
    expect(groups.map(({ block, notes: [one] }) => [one?.name, block?.text ?? null])).toEqual([
      ["cast on", "Cast on 98 (120) stitches."],
      ["rib", "Work the rib until it measures 5 cm."],
      ["brim", null],
    ]);
  });

  it("of an old and a new text meets at one place", () => {
    const now = readInstructions(SECOND)[2];
    if (now === undefined) throw new Error("no such block");
    const groups = groupByPlace(SECOND, [noted(1, "old"), { place: now.place, name: "new" }]);
    expect(groups.map((group) => group.notes.map(({ name }) => name))).toEqual([["old", "new"]]);
  });

  it("is quoted with the heading above and what stands beside it", () => {
    const block = readInstructions(FIRST)[1];
    if (block === undefined) throw new Error("no such block");
    expect(surroundingsOf(FIRST, block)).toEqual({
      heading: "Body",
      before: null,
      after: "Work the rib until it measures 5 cm.",
    });
  });
});

describe("a place in an address", () => {
  it("is found in the text that it was made from, and not in another", () => {
    const [, block] = readInstructions(FIRST);
    if (block === undefined) throw new Error("no such block");
    expect(blockOfKey(FIRST, placeKey(block.place))?.text).toBe("Cast on 98 (118) stitches.");
    expect(blockOfKey(SECOND, placeKey(block.place))).toBeNull();
    expect(blockOfKey(FIRST, "1-")).toBeNull();
  });

  it("is asked for with what is to be said, or not at all", () => {
    expect(placeQuery({ place: "1-aa", say: "trouble" })).toEqual({ place: "1-aa", say: "trouble" });
    expect(placeQuery({ place: "1-aa", say: "else" })).toBeNull();
    expect(placeQuery({ place: ["1-aa", "2-bb"], say: "question" })).toBeNull();
    expect(placeQuery({})).toBeNull();
  });

  it("leads to the headings of a text", () => {
    expect(textParts(FIRST).map(({ label }) => label)).toEqual(["Body"]);
    expect(textParts("")).toEqual([]);
  });
});
