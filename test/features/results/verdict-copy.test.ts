import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/engine/gaps";
import { betweenWords, verdictSentence, verdictWords } from "../../../src/features/results/verdict-copy";

function cell(change: Partial<Cell>): Cell {
  return {
    size: "l",
    measurement: "bust",
    reports: 2,
    gapCm: 2,
    standardErrorCm: 0.5,
    lowCm: 1,
    highCm: 3,
    chanceOff: 0.95,
    verdict: "off",
    testersToSettle: null,
    ...change,
  };
}

const bust = { girth: true };
const width = { less: "too narrow", more: "too wide" };
const inL = { measurement: bust, unit: "cm", size: "L" } as const;

describe("the words of a verdict", () => {
  it.each([
    [{}, "2 cm too wide"],
    [{ gapCm: -2.14 }, "2.1 cm too narrow"],
    [{ verdict: "holds" as const }, "as planned"],
    [{ verdict: "leaning" as const, gapCm: -1.2 }, "probably too narrow"],
    [{ verdict: "unsettled" as const, testersToSettle: 2 }, "not enough data: 2 more testers in L"],
    [{ verdict: "unsettled" as const, testersToSettle: 1 }, "not enough data: 1 more tester in L"],
    [{ verdict: "unsettled" as const, testersToSettle: 24 }, "not enough data"],
    [{ verdict: "unsettled" as const }, "not enough data"],
    [{ restsOn: [{ tester: "t1", measurement: null }] }, "2 cm too wide, perhaps"],
    [{ reports: 0, verdict: "leaning" as const }, "no report yet"],
  ])("%j is “%s”", (change, words) => {
    expect(verdictWords(cell(change), inL)).toBe(words);
  });

  it("gives inches in eighths: 2.54 cm is 1 in", () => {
    expect(verdictWords(cell({ gapCm: 2.54 }), { ...inL, unit: "in" })).toBe("1 in too wide");
  });

  it("gives the interval in a sentence", () => {
    expect(verdictSentence(cell({}), inL)).toBe("2 cm too wide in L: between 1 and 3 cm too wide.");
  });

  it("is no certainty where it rests on one tester", () => {
    const carried = cell({ restsOn: [{ tester: "t1", measurement: "bust" }] });
    expect(verdictSentence(carried, inL)).toBe(
      "Perhaps 2 cm too wide in L, if one tester’s measurements are right: between 1 and 3 cm too wide.",
    );
  });

  it("says how many testers settle it, how often, and what a few would do", () => {
    const open = { verdict: "unsettled" as const, gapCm: 1, lowCm: -1, highCm: 3 };
    const settles = (change: Partial<Cell>) =>
      verdictSentence(cell({ ...open, ...change }), inL)
        .split(". ")
        .slice(1)
        .join(". ");
    expect(settles({ testersToSettle: 2, chanceWithThree: 0.86 })).toBe(
      "2 more testers in L would settle it in 4 cases of 5.",
    );
    expect(settles({ testersToSettle: 24, chanceWithThree: 0.42 })).toBe(
      "24 more testers in L would settle it in 4 cases of 5. 3 more testers in L would settle it in 4 cases of 10.",
    );
    expect(settles({ testersToSettle: null, chanceWithThree: 0.02 })).toBe(
      "It is so close to the edge of the tolerance that even 30 more testers in L may not settle it. 3 more testers in L would hardly settle it.",
    );
  });

  it("gives what neighbouring sizes suggest for a cell without a report, where the engine has an estimate", () => {
    const none = { reports: 0, verdict: null };
    expect(verdictSentence(cell(none), inL)).toBe(
      "No report yet in L. Neighbouring sizes suggest between 1 and 3 cm too wide.",
    );
    expect(verdictSentence(cell({ ...none, gapCm: null, lowCm: null, highCm: null }), inL)).toBe("No report yet in L.");
  });
});

describe("an interval in words", () => {
  it.each([
    [1, 3, "between 1 and 3 cm too wide"],
    [-3, -1, "between 1 and 3 cm too narrow"],
    [-1, 2, "between 1 cm too narrow and 2 cm too wide"],
    [-0.01, 2, "between 0 and 2 cm too wide"],
    [2.01, 2.04, "about 2 cm too wide"],
  ])("%d to %d is “%s”", (low, high, words) => {
    expect(betweenWords([low, high], { words: width, unit: "cm" })).toBe(words);
  });
});

describe("a verdict's side", () => {
  const at = (from: [number, number], to: [number, number]) => ({ on: { piece: "body", from, to } });
  it.each([
    ["a girth is wide, wherever it is on the schematic", { girth: true, ...at([0, 0], [0, 1]) }, "2 cm too wide"],
    ["across the schematic is wide", at([0, 1], [1, 0.9]), "2 cm too wide"],
    ["down the schematic is long", at([0.5, 0], [0.5, 1]), "2 cm too long"],
    ["without a place it is big", {}, "2 cm too big"],
  ])("%s", (_title, measurement, words) => {
    expect(verdictWords(cell({}), { ...inL, measurement })).toBe(words);
  });
});
