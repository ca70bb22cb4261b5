import { describe, expect, it } from "vitest";
import { gaps } from "@/engine/gaps";
import { expectations } from "@/engine/revision";
import { callDocument, reader } from "../../factories/call";
import { patternDocument } from "../../factories/pattern";

const worked = { width: 98, height: 100 };
/** By design the bust of the small size is 2 × 98 ÷ 2 + 2 × 1 = 100; both measured 3 more. */
const call = callDocument([
  reader("t1", { bust: 103, length: 40 }, { worked }),
  reader("t2", { bust: 103, length: 40.5 }, { worked }),
]);

function expected(revised: ReturnType<typeof patternDocument>, size: string, measurement: string) {
  const all = expectations({ call, cells: gaps(call).cells, revised });
  const found = all.find((one) => one.size === size && one.measurement === measurement);
  if (found === undefined) throw new Error("no such cell");
  return found;
}

describe("what is expected after a correction", () => {
  it("moves the design to the reality and the gap to zero when an allowance is corrected by what all testers show", () => {
    // By hand: the edging stands twice in the bust, so 1 + 3 ÷ 2 = 2.5 each makes 98 + 5 = 103.
    const revised = patternDocument({ allowances: [{ id: "edging", label: "Edging", cm: 2.5 }] });
    const bust = expected(revised, "small", "bust");
    expect(bust.designCm).toEqual({ before: 100, after: 103 });
    // Two testers alone do not settle it, so the gap lies between nothing and what they showed.
    expect(bust.gap.before.gapCm).toBeGreaterThan(1);
    expect(bust.gap.before.gapCm).toBeLessThan(3);
    expect(bust.gap.after.gapCm).toBeCloseTo(0, 1);
    expect(bust.expectedCm.after).toBeCloseTo(103, 1);
    expect(bust.touched).toBe(true);
  });

  it("leaves the gap of testers who worked the old count as it is, so that the expected length moves with the count", () => {
    // By hand: 94 stitches twice at 2 to a cm are 94, and 2 of edging: 96. The gap stays what it was.
    const revised = patternDocument({
      grading: { width: { small: 94, large: 118 }, height: { small: 100, large: 110 } },
    });
    const bust = expected(revised, "small", "bust");
    expect(bust.designCm).toEqual({ before: 100, after: 96 });
    // What one more tester would add is worked out anew: they would work the new count.
    const { chanceWithThree: _before, ...before } = bust.gap.before;
    expect(bust.gap.after).toMatchObject(before);
    expect(bust.expectedCm.after).toBeCloseTo(96 + (bust.gap.before.gapCm ?? 0), 9);
    expect((bust.highCm ?? 0) - (bust.lowCm ?? 0)).toBeCloseTo(
      (bust.gap.after.highCm ?? 0) - (bust.gap.after.lowCm ?? 0),
      9,
    );
  });

  it("does not touch what is not worked from the corrected number", () => {
    const revised = patternDocument({ allowances: [{ id: "edging", label: "Edging", cm: 2.5 }] });
    expect(expected(revised, "small", "length").touched).toBe(false);
  });

  it("moves the design of a size without reports and says so, whatever is known of its gap", () => {
    // By hand: 118 + 2 × 2.5.
    const revised = patternDocument({ allowances: [{ id: "edging", label: "Edging", cm: 2.5 }] });
    const bust = expected(revised, "large", "bust");
    expect(bust.designCm).toEqual({ before: 120, after: 123 });
    expect(bust.gap.after.reports).toBe(0);
    expect(bust.touched).toBe(true);
  });
});
