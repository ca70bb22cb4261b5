import { describe, expect, it } from "vitest";
import { givesNumber, passagesWith } from "@/engine/instructions";

const TEXT = `# 120 stitches

Cast on 100 (120, 140) stitches.

- Work 120 rows.
- Divide: 50 (60, 70) for the back.
- Join, 100 (110, 120) stitches.`;

describe("passages that give a number in a size", () => {
  it("are those whose list has it at that size, and neither headings nor numbers that stand alone", () => {
    const found = (size: number, number: number) =>
      passagesWith(TEXT, 3, { size, number }).map(({ text }) => text.slice(0, 7));
    expect(found(1, 120)).toEqual(["Cast on"]);
    expect(found(2, 120)).toEqual(["Join, 1"]);
    expect(found(0, 100)).toEqual(["Cast on", "Join, 1"]);
    expect(found(1, 100)).toEqual([]);
    expect(passagesWith("", 3, { size: 0, number: 1 })).toEqual([]);
  });

  it("refuses a size that is not there", () => {
    expect(() => givesNumber("Cast on 100 (120, 140).", 3, { size: 3, number: 100 })).toThrow(RangeError);
  });
});
