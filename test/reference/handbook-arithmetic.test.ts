import { beforeAll, describe, expect, it } from "vitest";
import { gradePattern } from "@/engine/grading";
import type { Solver } from "@/engine/integer-program";
import { highsSolver } from "@/solver/highs-solver";
import { patternDocument } from "../factories/pattern";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

/**
 * Stitches = width × gauge, to the nearest whole one or the nearest that a repeat allows: the arithmetic of every handbook
 * (common practice, no source). Numbers by hand.
 */
describe("width × gauge", () => {
  it.each([
    // 76 × 1.4 = 106.4; 86 × 1.4 = 120.4; 101 × 1.4 = 141.4; 127 × 1.4 = 177.8
    [14, [106, 120, 141, 178]],
    // 76 × 1.75 = 133; 86 × 1.75 = 150.5; 101 × 1.75 = 176.75; 127 × 1.75 = 222.25. Of 150 and 151, as near as each other,
    // 151 grows more evenly: by 18, 26, 45, which change by 8 + 19, against 17, 27, 45 by 10 + 18.
    [17.5, [133, 151, 177, 222]],
    // 76 × 2.2 = 167.2; 86 × 2.2 = 189.2; 101 × 2.2 = 222.2; 127 × 2.2 = 279.4
    [22, [167, 189, 222, 279]],
    // 76 × 2.8 = 212.8; 86 × 2.8 = 240.8; 101 × 2.8 = 282.8; 127 × 2.8 = 355.6
    [28, [213, 241, 283, 356]],
  ])("makes girths of 76, 86, 101 and 127 cm at %s stitches to 10 cm", (stitches, expected) => {
    expect(graded({ stitches, repeat: null })).toEqual(expected);
  });

  it.each([
    // Multiples of 4 + 2 next to 133, 150.5, 176.75, 222.25: 134, 150, 178, 222.
    [17.5, { of: 4, plus: 2 }, [134, 150, 178, 222]],
    // Multiples of 6 next to 167.2, 189.2, 222.2, 279.4: 168, 186 or 192 at 3.2 and 2.8 off, 222, 276 or 282 at 3.4 and 2.6.
    [22, { of: 6, plus: 0 }, [168, 192, 222, 282]],
    // Multiples of 8 + 1 next to 106.4, 120.4, 141.4, 177.8: 105, 121, 145 at 3.6 against 137 at 4.4, 177.
    [14, { of: 8, plus: 1 }, [105, 121, 145, 177]],
  ])("makes the same girths at %s stitches to 10 cm in repeats of %j", (stitches, repeat, expected) => {
    expect(graded({ stitches, repeat })).toEqual(expected);
  });
});

const GIRTHS = [76, 86, 101, 127];

/** Stitches of one count that goes once round each girth. */
function graded({ stitches, repeat }: { stitches: number; repeat: { of: number; plus: number } | null }) {
  const [girth] = patternDocument().measurements;
  if (girth === undefined) throw new Error("the factory has a measurement");
  const sizes = GIRTHS.map((bust) => ({ id: `girth-${bust}`, label: `${bust}`, body: { bust } }));
  const round = { id: "round", label: "Round", fabric: "main", direction: "stitches" } as const;
  const pattern = patternDocument({
    fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches, rows: 20 } }],
    sizes,
    counts: [repeat ? { ...round, repeat } : round],
    measurements: [
      { ...girth, toleranceCm: 5, terms: [{ times: 1, count: "round" }], target: { body: "bust", easeCm: 0 } },
    ],
    grading: undefined,
  });
  const outcome = gradePattern({ pattern }, solver);
  if (outcome.status !== "optimal") throw new Error(JSON.stringify(outcome));
  return sizes.map(({ id }) => outcome.grading["round"]?.[id]);
}
