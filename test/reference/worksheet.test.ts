import { describe, expect, it } from "vitest";
import { indexPattern, measure, patternWorking } from "@/engine/prediction";
import { gaugeOver, lengthOfCount } from "@/engine/units";
import { patternDocument } from "../factories/pattern";

describe("a worksheet of terms and allowances (common practice, no source)", () => {
  it("makes 30 stitches over 20 cm 15 to 10 cm, and 17 cm of them 26 to the nearest stitch", () => {
    const over10 = gaugeOver({ count: 30, overCm: 20 });
    expect(over10).toBe(15);
    expect(Math.round((17 * over10) / 10)).toBe(26);
    expect(lengthOfCount(26, over10 / 10)).toBeCloseTo(17.33, 2);
  });

  it("makes 50 rows over 27 cm 18.5 to 10 cm", () => {
    expect(gaugeOver({ count: 50, overCm: 27 }).toFixed(1)).toBe("18.5");
  });

  it("leaves 23 a side of a girth of 96 of which two parts of 25 are given, and 17 less edging, seam and room", () => {
    const pattern = patternDocument({
      counts: [],
      grading: {},
      lengths: [
        { id: "girth", label: "Girth", cm: 96 },
        { id: "given", label: "Given part", cm: 25 },
      ],
      allowances: [
        { id: "edging", label: "Edging", cm: -1 },
        { id: "seam", label: "Thick seam", cm: -2 },
        { id: "room", label: "Room", cm: -3 },
      ],
    });
    const side = { id: "side", letter: "A", label: "Side", how: "", toleranceCm: 1 };
    const given = [
      { times: 0.5, length: "girth" },
      { times: -1, length: "given" },
    ];
    const less = ["edging", "seam", "room"].map((allowance) => ({ times: 1, allowance }));
    const index = indexPattern(pattern);
    const working = patternWorking(index, "small");
    expect(measure(index, { ...side, terms: given }, working).cm).toBe(23);
    expect(measure(index, { ...side, terms: [...given, ...less] }, working).cm).toBe(17);
  });
});
