import { describe, expect, it } from "vitest";
import { stepText, stepsInSizes } from "@/engine/garment";
import type { TypedStep } from "@/engine/pattern";
import { garmentPattern } from "../../factories/garment-pattern";

const vest = garmentPattern({
  counts: {
    width: ["stitches", 40, 50],
    neck: ["stitches", 12, 16],
    side: ["stitches", 14, 17],
    rows: ["rows", 20, 24],
  },
  pieces: [{ id: "front", parts: ["front", "right", "centre", "left"] }],
  steps: [
    { id: "cast-on", in: "front", do: "start", how: "cast-on", stitches: { count: "width" }, worked: "flat" },
    { id: "body", in: "front", do: "work", rows: { count: "rows" } },
    {
      id: "divide",
      ...{ in: "front", do: "divide" },
      into: [
        { part: "right", stitches: { count: "side" } },
        { part: "centre", stitches: { count: "neck" } },
        { part: "left", stitches: { count: "side" } },
      ],
    },
    { id: "hold", in: "centre", do: "end", how: "hold", edge: "neck" },
    { id: "right", in: "right", do: "work", rows: 4 },
    { id: "right-end", in: "right", do: "end", how: "bind-off", edge: "right-shoulder" },
    { id: "left-end", in: "left", do: "end", how: "bind-off", edge: "left-shoulder" },
  ],
});

/** Of each step the stitches that it leaves in every size, and what is said of it. */
function told(pattern: typeof vest) {
  const [front] = stepsInSizes(pattern).pieces;
  return front?.steps.map(({ step, sizes }) => [
    step.id,
    ...sizes.map(({ onNeedle, status, messages }) =>
      status === "worked" ? onNeedle.map(({ stitches }) => stitches).join(" ") : [status, ...messages].join(": "),
    ),
  ]);
}

describe("steps of a piece", () => {
  it("leave their stitches on the needle in every size", () => {
    expect(told(vest)).toEqual([
      ["cast-on", "40", "50"],
      ["body", "40", "50"],
      ["divide", "14 12 14", "17 16 17"],
      ["hold", "12", "16"],
      ["right", "14", "17"],
      ["right-end", "0", "0"],
      ["left-end", "0", "0"],
    ]);
  });

  it("tell what is wrong at the step and in the size that have it, and the others go on", () => {
    const wrong = { ...vest, grading: { ...vest.grading, neck: { small: 12, large: 15 } } };
    expect(told(wrong)?.[2]).toEqual([
      "divide",
      "14 12 14",
      "fault: “front” has 50 stitches, and 17 + 15 + 17 = 49 are divided. Make them the same.",
    ]);
  });

  it("are worked up to the first whose count has no number, and wait from there in that size", () => {
    const { neck: _neck, ...grading } = vest.grading ?? {};
    const open = { ...vest, grading: { ...grading, neck: { small: 12 } } };
    expect(told(open)).toEqual([
      ["cast-on", "40", "50"],
      ["body", "40", "50"],
      ["divide", "14 12 14", "absent: “neck” has no number yet. Enter it to see how this is worked."],
      ["hold", "12", "absent"],
      ["right", "14", "absent"],
      ["right-end", "0", "absent"],
      ["left-end", "0", "absent"],
    ]);
  });
});

describe("a step in words", () => {
  const names = {
    number: (number: unknown) => (typeof number === "object" ? "20 (24)" : String(number)),
    length: (id: string) => `to “${id}”`,
    noun: "row",
  } as const;
  const here = { id: "s", in: { part: "front" } };

  it.each<[TypedStep, string]>([
    [
      { ...here, do: "start", how: "cast-on", stitches: { count: "width" }, worked: "round" },
      "Cast on 20 (24) stitches and join in the round",
    ],
    [{ ...here, do: "start", how: "chain", stitches: 12, worked: "flat" }, "Chain 12"],
    [{ ...here, do: "work", rows: { length: "armhole" } }, "Work to “armhole” even"],
    [
      {
        ...here,
        do: "work",
        rows: 40,
        shape: [
          { at: "both", stitches: 1, times: 5, as: "decrease", every: 2 },
          { at: "left", stitches: 2, times: 1, as: "bind-off", every: 4, start: 3 },
        ],
      },
      "Work 40 rows; decrease 1 stitch at each end, every other row, 5 times; bind off 2 stitches at the left edge, every 4 rows, once, first in row 3",
    ],
    [
      { ...here, do: "bind-off", at: "both", each: { count: "underarm" } },
      "Bind off 20 (24) stitches at the start of the next 2 rows",
    ],
    [{ ...here, do: "hold", at: "left", each: 8, times: 2 }, "Put on hold 8 stitches at the left edge, twice"],
    [
      {
        ...here,
        do: "divide",
        into: [
          { part: "right", stitches: 5 },
          { part: "left", stitches: { count: "side" } },
        ],
      },
      "Divide: 5 for “right”, 20 (24) for “left”",
    ],
    [
      { ...here, do: "join", parts: [{ part: "a" }, { part: "b" }], as: "body", between: [8], worked: "round" },
      "Join “a”, “b” in the round, with 8 new stitches between",
    ],
    [{ ...here, do: "end", how: "three-needle", edge: "e", with: { part: "back" } }, "Bind off together with “back”"],
  ])("says what is done: %j", (step, words) => {
    expect(stepText(step, names)).toBe(words);
  });
});
