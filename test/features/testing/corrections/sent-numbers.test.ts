import { describe, expect, it } from "vitest";
import { countNumbers } from "@/features/testing/corrections/count-numbers";
import { correctionQuery, correctionSearch } from "@/features/testing/corrections/correction-query";
import { sentNumbers } from "@/features/testing/corrections/sent-numbers";
import { patternDocument } from "../../../factories/pattern";

const counts = countNumbers(patternDocument(), []);
const rows = (was: readonly string[], becomes: readonly string[]) => ({
  count: ["width", "width", "height"],
  size: ["small", "large", "small"],
  was: [...was],
  becomes: [...becomes],
});

describe("the numbers of a correction's form", () => {
  it("are those with a right number, whatever stands in the other rows", () => {
    expect(sentNumbers(rows(["98", "118", "100"], ["", "120", " 102 "]), counts)).toEqual({
      faults: [],
      numbers: [
        { count: "width", size: "large", was: 118, becomes: 120 },
        { count: "height", size: "small", was: 100, becomes: 102 },
      ],
    });
  });

  it("are refused by name where they are no whole numbers, or where nothing changes", () => {
    const { numbers, faults } = sentNumbers(rows(["98", "", "100"], ["98", "120", "10.5"]), counts);
    expect(numbers).toEqual([]);
    expect(faults[0]).toBe("Width, S: both numbers are 98. Enter the right one, or leave it blank.");
    expect(faults[1]).toMatch(/^Width, L: enter both numbers as whole numbers such as 48/);
    expect(faults[2]).toMatch(/^Height, S: enter both numbers/);
  });

  it("are refused where the newest revision has no such count or size", () => {
    const gone = { count: ["sleeve", "width"], size: ["small", "huge"], was: ["1", "1"], becomes: ["2", "2"] };
    expect(sentNumbers(gone, counts)).toEqual({
      numbers: [],
      faults: ["The newest revision no longer has one of these counts. Reload the page and choose again."],
    });
  });
});

describe("the numbers that stand in the form", () => {
  it("are the revision's, and of those that were corrected the newest correction's", () => {
    const published = [
      { count: "width", size: "small", was: 100, becomes: 102 },
      { count: "width", size: "small", was: 98, becomes: 100 },
    ];
    const [width] = countNumbers(patternDocument(), published);
    expect(width?.sizes.map(({ id, was }) => [id, was])).toEqual([
      ["small", 102],
      ["large", 118],
    ]);
  });

  it("can be asked for in the address, filled in or not; anything else there is ignored", () => {
    const changes = [{ count: "width", size: "small", was: 105, becomes: 98 }];
    const search = new URLSearchParams(correctionSearch(changes).replace(/#.*/, ""));
    expect(correctionQuery({ change: search.getAll("change"), count: "height" })).toEqual({
      counts: ["width", "height"],
      changes,
    });
    expect(correctionQuery({ change: ["width.small.x.98", "1", "a.b.1.2.5"], count: undefined })).toEqual({
      counts: ["a"],
      changes: [{ count: "a", size: "b", was: 1, becomes: 2 }],
    });
  });
});
