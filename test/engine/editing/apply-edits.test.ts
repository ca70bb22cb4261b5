import { describe, expect, it } from "vitest";
import { applyEdits } from "@/engine/editing";
import { parsePattern } from "@/engine/pattern";
import { patternDocument } from "../../factories/pattern";

const pattern = patternDocument({
  lengths: [{ id: "hem", label: "Hem", cm: { small: 4, large: 5 } }],
});

describe("applyEdits", () => {
  it("reads a decimal comma, a fraction with its unit, and a whole number, and leaves the rest", () => {
    const typed = { "allowances.edging.cm": "1,5", "lengths.hem.cm.large": "2 3/8 in", "grading.width.small": "100" };
    const { document, faults, changes } = applyEdits(pattern, typed, "cm");
    expect(faults).toEqual([]);
    expect(document.allowances[0]?.cm).toBe(1.5);
    // By hand: 2.375 × 2.54.
    expect(document.lengths?.[0]?.cm).toEqual({ small: 4, large: 2.375 * 2.54 });
    expect(document.grading).toEqual({ width: { small: 100, large: 118 }, height: { small: 100, large: 110 } });
    expect(changes.map(({ what, size, was, becomes }) => [what, size, was, becomes])).toEqual([
      ["Hem", "L", 5, 2.375 * 2.54],
      ["Edging", undefined, 1, 1.5],
      ["Width", "S", 98, 100],
    ]);
    expect(parsePattern(document).ok).toBe(true);
  });

  it("tells at the field what it cannot read, and keeps the number that stands", () => {
    const typed = {
      "grading.width.small": "98.5",
      "grading.width.large": "many",
      "grading.height.small": "",
      "lengths.hem.cm.small": "-2",
      "allowances.constructor.cm": "3",
    };
    const { document, faults, changes } = applyEdits(pattern, typed, "cm");
    expect(faults.map(({ path }) => path).toSorted()).toEqual(Object.keys(typed).toSorted());
    expect(document).toEqual(pattern);
    expect(changes).toEqual([]);
  });

  it("says at the field which numbers no pattern may have", () => {
    const typed = { "grading.width.small": "200000", "lengths.hem.cm.small": "1e3 cm", "allowances.edging.cm": "3000" };
    const { document, faults } = applyEdits(pattern, typed, "cm");
    expect(faults).toMatchObject([
      { path: "lengths.hem.cm.small" },
      { path: "allowances.edging.cm", message: "This must be between -2000 and 2000 cm." },
      { path: "grading.width.small", message: "This must be between 0 and 100000." },
    ]);
    expect(document).toEqual(pattern);
  });

  it("questions an implausible number", () => {
    const { questions, faults } = applyEdits(pattern, { "grading.width.small": "980" }, "cm");
    expect(questions.map(({ path }) => path)).toEqual(["grading.width.small"]);
    expect(faults).toEqual([]);
  });

  it("wants a count in every size or in none", () => {
    const { grading: _grading, ...ungraded } = pattern;
    const half = applyEdits(ungraded, { "grading.width.small": "98" }, "cm");
    expect(half.faults).toMatchObject([{ path: "grading.width.large" }]);
    const whole = applyEdits(ungraded, { "grading.width.small": "98", "grading.width.large": "118" }, "cm");
    expect(whole.faults).toEqual([]);
    expect(whole.document.grading).toEqual({ width: { small: 98, large: 118 } });
  });

  it("is not confused by ids that every object has", () => {
    const odd = patternDocument({
      allowances: [{ id: "constructor", label: "Odd", cm: 1 }],
      measurements: [],
    });
    expect(applyEdits(odd, {}, "cm").document).toEqual(odd);
    expect(applyEdits(odd, { "allowances.constructor.cm": "2" }, "cm").document.allowances[0]?.cm).toBe(2);
  });
});
