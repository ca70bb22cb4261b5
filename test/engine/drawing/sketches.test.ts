import { describe, expect, it } from "vitest";
import { drawn, outlines, patternOf } from "./one-piece";

describe("a piece that can only be sketched", () => {
  it("marks a step where a section starts on other stitches, and describes it", () => {
    const shape = drawn(
      patternOf([
        [40, 40, 25],
        [20, 20, 25],
      ]),
    );
    expect(outlines(shape)).toEqual([
      ["-10,0", "-10,10", "10,10", "10,0"],
      ["-5,10", "-5,20", "5,20", "5,10"],
    ]);
    expect(shape.marks).toEqual([{ at: { xCm: -7.5, yCm: 10 }, kind: "step", message: shape.sketchReasons[0] }]);
    expect(shape.sketchReasons).toEqual([
      "Part 1 ends with 40 stitches and part 2 starts on 20: 20 fewer at once. The pattern does not say on which side, so half of the step is drawn on each.",
    ]);
    expect(shape.sections.map(({ fault }) => fault)).toEqual([null, null]);
    expect(shape.joins).toEqual([{ from: { xCm: -5, yCm: 10 }, to: { xCm: 5, yCm: 10 }, isSure: true }]);
  });

  it.each([
    ["nobody says how it is shaped", undefined, /its shaping is not specified/],
    ["its shaping does not come out", { stitches: 3, edges: "both" }, /10 fewer, and 6 go at a time/],
  ] as const)("draws a section straight and unsure where %s", (_case, shaping, says) => {
    const shape = drawn(patternOf([[20, 10, 25, shaping]]));
    expect(outlines(shape)).toEqual([["-5,0", "-2.5,10", "2.5,10", "5,0"]]);
    expect(shape.edges.map(({ isSure }) => isSure)).toEqual([false, false, true, true]);
    expect(shape.sections[0]?.fault).toMatch(says);
    expect(shape.marks).toMatchObject([{ kind: "fault", at: { xCm: -3.75, yCm: 5 } }]);
    expect(shape.sketchReasons[0]).toMatch(/^Part 1: /);
  });

  it.each([
    ["has no sections", patternOf([]), "Nothing of it is worked yet, so its shape is unknown."],
    ["has counts without numbers", patternOf([[20, 20, 25]], {}, { grading: {} }), /have no number yet/],
    ["has no rows", patternOf([[20, 20, 0]]), /has 0 stitches or rows/],
  ])("is a placeholder, not to scale, if it %s", (_case, pattern, says) => {
    const shape = drawn(pattern);
    expect(shape.isToScale).toBe(false);
    expect(shape.sections).toEqual([]);
    expect(shape.edges.some(({ isSure }) => isSure)).toBe(false);
    expect(shape.sketchReasons).toEqual([expect.stringMatching(says)]);
  });
});
