import { describe, expect, it } from "vitest";
import { calibrateYarn } from "@/engine/calibration";
import { makersGauge } from "../../../src/engine/yarn/makers-gauge";

describe("the own gauge of makers whom nobody has seen", () => {
  it("is the usual one, about the stated gauge, before there is a swatch", () => {
    // By hand: variance 0.05² ÷ 2, and as much again for where their mean lies.
    const { shift, spread, degreesOfFreedom } = makersGauge([]);
    expect(shift).toBe(0);
    expect(spread).toBeCloseTo(Math.sqrt((0.05 ** 2 / 2) * 2), 12);
    expect(degreesOfFreedom).toBe(4);
  });

  it("moves towards testers who all work loosely, and is certain where they agree", () => {
    // By hand: 99 × 0.04 ÷ 100; the stated gauge lies 0.0396 below that, the testers 0.0004 above.
    const { shift, spread } = makersGauge(Array.from({ length: 99 }, () => 0.04));
    expect(shift).toBeCloseTo(0.0396, 12);
    const variance = (4 * (0.05 ** 2 / 2) + 0.0396 ** 2 + 99 * 0.0004 ** 2) / 103;
    expect(spread).toBeCloseTo(Math.sqrt(variance * 1.01), 12);
  });

  it("does not believe a swatch that is twice as large", () => {
    expect(makersGauge([Math.log(2)]).shift).toBeCloseTo(0.2 / 2, 12);
  });
});

it("suffices for about nine new makers in ten, at their own gauge", { timeout: 60_000 }, () => {
  const tally = calibrateYarn({ weighings: "2–6 a size", makers: "usual", calls: 40, seed: 909 });
  expect(tally.of("enough")).toBeGreaterThan(1000);
  expect(tally.share("enough")).toBeGreaterThan(0.86);
  expect(tally.share("enough")).toBeLessThan(0.94);
});
