import { describe, expect, it } from "vitest";
import type { Cell } from "@/engine/gaps";
import { betweenWords, verdictSentence, verdictWords } from "@/features/analyses/verdict-words";

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

const inL = { unit: "cm", size: "L" } as const;

describe("the words of a verdict", () => {
  it.each([
    [{}, "2 cm too big"],
    [{ gapCm: -2.14 }, "2.1 cm too small"],
    [{ verdict: "holds" as const }, "on size"],
    [{ verdict: "leaning" as const, gapCm: -1.2 }, "probably too small"],
    [{ verdict: "unsettled" as const, testersToSettle: 2 }, "can’t tell yet: 2 more testers in L"],
    [{ verdict: "unsettled" as const, testersToSettle: 1 }, "can’t tell yet: 1 more tester in L"],
    [{ verdict: "unsettled" as const }, "can’t tell yet: 10 or more testers in L"],
    [{ reports: 0, verdict: "leaning" as const }, "no report yet"],
  ])("%j is “%s”", (change, words) => {
    expect(verdictWords(cell(change), inL)).toBe(words);
  });

  it("speaks inches in eighths: 2.54 cm are 1 in", () => {
    expect(verdictWords(cell({ gapCm: 2.54 }), { unit: "in", size: "L" })).toBe("1 in too big");
  });

  it("gives the interval in a sentence", () => {
    expect(verdictSentence(cell({}), inL)).toBe("2 cm too big in L: somewhere between 1 and 3 cm too big.");
  });

  it("says what the neighbours suggest of a cell without a report, where the engine says it", () => {
    const none = { reports: 0, verdict: null };
    expect(verdictSentence(cell(none), inL)).toBe(
      "No report yet in L. What its neighbours suggest: somewhere between 1 and 3 cm too big.",
    );
    expect(verdictSentence(cell({ ...none, gapCm: null, lowCm: null, highCm: null }), inL)).toBe("No report yet in L.");
  });
});

describe("an interval in words", () => {
  it.each([
    [1, 3, "between 1 and 3 cm too big"],
    [-3, -1, "between 1 and 3 cm too small"],
    [-1, 2, "between 1 cm too small and 2 cm too big"],
    [-0.01, 2, "between 0 and 2 cm too big"],
    [2.01, 2.04, "about 2 cm too big"],
  ])("%d to %d is “%s”", (low, high, words) => {
    expect(betweenWords(low, high, "cm")).toBe(words);
  });
});
