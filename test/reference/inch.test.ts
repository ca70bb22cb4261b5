import { describe, expect, it } from "vitest";
import { FOUR_INCHES_CM, fromCm, gaugeOver, toCm } from "@/engine/units";

describe("the inch (international yard and pound agreement, 1959: 1 in = 2.54 cm exactly; value from memory, agrees with NIST SP 811)", () => {
  it("is 2.54 cm", () => {
    expect(toCm(1, "in")).toBe(2.54);
    expect(fromCm(2.54, "in")).toBe(1);
  });

  it("makes four inches 10.16 cm, and not 10", () => {
    expect(FOUR_INCHES_CM).toBe(10.16);
  });
});

describe("gauge over 4 in and over 10 cm (by the definition of the inch)", () => {
  it("is 1.6 % fewer stitches over 10 cm than the same number over 4 in", () => {
    expect(gaugeOver({ count: 20, overCm: FOUR_INCHES_CM }, 10)).toBeCloseTo(20 / 1.016, 12);
  });

  it("is the same fabric either way", () => {
    const overTen = gaugeOver({ count: 20, overCm: FOUR_INCHES_CM }, 10);
    expect(gaugeOver({ count: overTen, overCm: 10 }, FOUR_INCHES_CM)).toBeCloseTo(20, 12);
  });
});
