import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gradingWarnings } from "@/engine/pattern";
import { pickUp, pickUpRate, pickUpTie, pickUpText, rateOfTie, rateText } from "@/engine/shaping";
import { patternDocument } from "../../factories/pattern";

const THREE_FOR_FOUR = { stitches: 3, rows: 4 };
const RUNS = 500;

describe("a rate from two gauges", () => {
  it.each([
    // 22 ÷ 30 = 0.733: 2 for 3 is 9 % off, 3 for 4 is 2.3 % off.
    [2.2, 3, { stitches: 3, rows: 4 }],
    // 20 ÷ 28 = 5 ÷ 7 exactly; 3 for 4 would be 5 % off.
    [2, 2.8, { stitches: 5, rows: 7 }],
    [2, 2, { stitches: 1, rows: 1 }],
    // 18 ÷ 9: tall rows take 2 stitches each.
    [1.8, 0.9, { stitches: 2, rows: 1 }],
    // 1 ÷ 20 lies beyond 1 for 8, which is then the nearest.
    [0.1, 2, { stitches: 1, rows: 8 }],
  ])("%d stitches and %d rows to the cm", (stitchesPerCm, rowsPerCm, rate) => {
    expect(pickUpRate({ stitchesPerCm, rowsPerCm })).toEqual(rate);
  });
});

describe("a pick-up along rows", () => {
  it("is whole repeats and a spoken remainder", () => {
    // 57 = 14 × 4 + 1: 14 × 3 = 42, and 1 × 3 ÷ 4 = 0.75 is 1: 43. 57 × 3 ÷ 4 = 42.75.
    expect(pickUp(57, THREE_FOR_FOUR)).toEqual({ stitches: 43, repeats: 14, remainder: { stitches: 1, rows: 1 } });
    expect(pickUpText(57, THREE_FOR_FOUR, "knitting")).toBe(
      "Pick up and knit 3 stitches for every 4 rows 14 times (pick up 3, skip 1), then 1 stitch over the last row: 43 stitches.",
    );
    expect(pickUpText(58, THREE_FOR_FOUR, "crochet")).toBe(
      "Along the row ends, work 3 stitches for every 4 rows 14 times (work 3, skip 1), then 2 stitches over the last 2 rows: 44 stitches.",
    );
  });

  it("says how more stitches than rows lie", () => {
    expect(pickUpText(8, { stitches: 5, rows: 4 }, "crochet")).toBe(
      "Along the row ends, work 5 stitches for every 4 rows twice (1 in each row, 1 more in 1 of them): 10 stitches.",
    );
    expect(pickUpText(9, { stitches: 2, rows: 1 }, "crochet")).toBe(
      "Along the row ends, work 2 stitches for every row 9 times: 18 stitches.",
    );
  });

  it("speaks of an edge that is shorter than one repeat, or has no rows", () => {
    expect(pickUpText(2, { stitches: 1, rows: 5 }, "knitting")).toBe("Pick up and knit none over 2 rows: 0 stitches.");
    expect(pickUpText(0, THREE_FOR_FOUR, "knitting")).toBe("There are no rows to pick up along.");
    expect(rateText({ stitches: 1, rows: 1 })).toBe("1 stitch for every row");
  });
});

describe("the tie that holds a rate", () => {
  const pattern = (band: number, edge: number) =>
    patternDocument({
      counts: [
        { id: "band", label: "Band", fabric: "main", direction: "stitches" },
        { id: "edge", label: "Edge", fabric: "main", direction: "rows" },
      ],
      ties: [pickUpTie({ stitches: "band", rows: "edge", rate: THREE_FOR_FOUR })],
      measurements: [],
      grading: { band: { small: band, large: band }, edge: { small: edge, large: edge } },
    });

  it("is near by half the rate's rows", () => {
    expect(pattern(43, 57).ties).toEqual([{ count: "band", per: 4, equals: [{ times: 3, count: "edge" }], within: 2 }]);
    // 4 × 43 = 172 and 3 × 57 = 171 are within 2; 4 × 42 = 168 is not.
    expect(gradingWarnings(pattern(43, 57))).toEqual([]);
    expect(gradingWarnings(pattern(42, 57))).toHaveLength(2);
  });

  it("is met by every pick-up, whatever the rate and the rows", () => {
    let ran = 0;
    const small = fc.integer({ min: 1, max: 8 });
    fc.assert(
      fc.property(small, small, fc.nat(300), (stitches, rows, edge) => {
        ran += 1;
        const { within = 0 } = pickUpTie({ stitches: "band", rows: "edge", rate: { stitches, rows } });
        const picked = pickUp(edge, { stitches, rows });
        expect(Math.abs(rows * picked.stitches - stitches * edge)).toBeLessThanOrEqual(within);
        expect(picked.repeats * rows + picked.remainder.rows).toBe(edge);
        expect(picked.repeats * stitches + picked.remainder.stitches).toBe(picked.stitches);
      }),
      { numRuns: RUNS },
    );
    expect(ran).toBe(RUNS);
  });

  it("tells its rate again, in lowest terms, and no other tie tells one", () => {
    const { counts } = pattern(43, 57);
    const held = { stitches: "band", rows: "edge", rate: THREE_FOR_FOUR };
    expect(rateOfTie(counts, pickUpTie(held))).toEqual(held);
    expect(rateOfTie(counts, { count: "band", per: 8, equals: [{ times: 6, count: "edge" }] })).toEqual(held);
    expect(rateOfTie(counts, { count: "band", equals: [{ times: 2, count: "band" }] })).toBeNull();
    expect(rateOfTie(counts, { count: "edge", equals: [{ times: 2, count: "edge" }] })).toBeNull();
    expect(rateOfTie(counts, { count: "band", equals: [] })).toBeNull();
  });
});
