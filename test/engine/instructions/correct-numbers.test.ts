import { describe, expect, it } from "vitest";
import { correctNumbers, readInstructions, textWithChanges } from "@/engine/instructions";
import { revisedPattern } from "@/features/testing/corrections/revised-pattern";
import { shownBlocks } from "@/features/testing/questions/shown-blocks";
import { patternDocument } from "../../factories/pattern";

const M = { sizeCount: 3, index: 1 };
const change = (size: number, was: number, becomes: number, count = "width") => ({ size, count, was, becomes });

describe("a corrected passage", () => {
  it("has the right number beside the wrong one of that size, and nothing beside the same number of another", () => {
    const [, list] = correctNumbers("Work 46 (46, 50) stitches.", M, [change(1, 46, 48)]);
    expect(list).toMatchObject({
      kind: "sizes",
      parts: [{ text: "46" }, {}, { text: "46", becomes: "48" }, {}, {}, {}],
    });
    expect(textWithChanges("Work 46 (46, 50) stitches, 46 cm.", 3, [change(1, 46, 48)])).toBe(
      "Work 46 (48, 50) stitches, 46 cm.",
    );
  });

  it("goes on from an earlier correction, and stays where the number is right already", () => {
    const twice = [change(1, 46, 48), change(1, 48, 52)];
    expect(textWithChanges("46 (46, 50)", 3, twice)).toBe("46 (52, 50)");
    expect(textWithChanges("46 (52, 50)", 3, twice)).toBe("46 (52, 50)");
    const two = [change(1, 46, 48), change(1, 48, 52, "height")];
    expect(textWithChanges("46 (46, 50) stitches, 48 (48, 54) rows", 3, two)).toBe(
      "46 (48, 50) stitches, 48 (52, 54) rows",
    );
  });

  it("without a list has its numbers corrected where they stand alone, and not inside others", () => {
    expect(textWithChanges("Cast on 46. Not 146, 46.5 or 46/2; 46 again", 3, [change(1, 46, 48)])).toBe(
      "Cast on 48. Not 146, 46.5 or 46/2; 48 again",
    );
    const marked = correctNumbers("Cast on 46.", M, [change(0, 46, 48)]);
    expect(marked).toEqual([{ kind: "text", text: "Cast on 46." }]);
  });

  it("is shown for one's own size alone, too", () => {
    const text = "Work 46 (46, 50) stitches.";
    const key = `0-${readInstructions(text)[0]?.place.hash ?? ""}`;
    const blocks = shownBlocks(text, { count: 3, index: 1 }, "own", new Map([[key, [change(1, 46, 48)]]]));
    expect(blocks[0]?.pieces[1]).toEqual({ sizes: [{ was: "46", becomes: "48", own: true }] });
  });
});

describe("a revised pattern", () => {
  it("has the numbers in its grading and in the passages that were named, and in no others", () => {
    const instructions = "# Body\n\nCast on 98 (118).\n\n- Work 98 (118) again.\n";
    const pattern = patternDocument({ instructions });
    const place = readInstructions(instructions)[1]?.place;
    const numbers = [{ count: "width", size: "small", was: 98, becomes: 104 }];
    const { document, isChanged } = revisedPattern(pattern, [{ numbers, places: place ? [place] : [] }]);
    expect(isChanged).toBe(true);
    expect(document.grading?.["width"]).toEqual({ small: 104, large: 118 });
    expect(document.instructions).toBe("# Body\n\nCast on 104 (118).\n\n- Work 98 (118) again.\n");
    expect(revisedPattern(document, [{ numbers, places: [] }]).isChanged).toBe(false);
  });
});
