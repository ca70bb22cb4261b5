import { describe, expect, it } from "vitest";
import { gradingState, gradingWords } from "@/features/patterns/grading-state";
import { patternDocument } from "../../factories/pattern";

/** A pattern whose bust, 1 cm to a stitch and 2 cm of edging, is 100 cm of a target of 100 in the small size. */
const withWidths = (small: number, large: number) =>
  patternDocument({ grading: { width: { small, large }, height: { small: 100, large: 110 } } });

describe("the state of a grading", () => {
  it("counts numbers with a target that are within tolerance", () => {
    const state = gradingState(withWidths(98, 118));
    expect(state).toEqual({ all: 4, unknown: 0, withTarget: 2, missed: 0 });
    expect(gradingWords(state)).toBe("All 2 numbers are within tolerance");
  });

  it("counts those further from their target than the tolerance", () => {
    // 102 + 2 is 4 cm over; 2 cm are tolerated.
    const state = gradingState(withWidths(102, 118));
    expect(state.missed).toBe(1);
    expect(gradingWords(state)).toBe("1 of 2 numbers misses its target by more than the tolerance");
  });

  it("says first that counts are missing", () => {
    const state = gradingState(patternDocument({ grading: {} }));
    expect(state.unknown).toBe(4);
    expect(gradingWords(state)).toBe("4 of 4 numbers can’t be calculated yet: counts are missing");
  });

  it("tells a pattern without measurements, and one without targets", () => {
    expect(gradingWords(gradingState(patternDocument({ measurements: [] })))).toBe("No measurements yet");
    const measurements = patternDocument().measurements.filter(({ target }) => target === undefined);
    expect(gradingWords(gradingState(patternDocument({ measurements })))).toBe("No targets to compare with");
  });
});
