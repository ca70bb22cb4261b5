import { describe, expect, it } from "vitest";
import { normalChance } from "@/engine/distributions";
import { seededRandom } from "@/engine/seeded-random";
import { chanceSettled } from "../../../src/engine/gaps/chance-settled";
import { settling } from "../../../src/engine/gaps/testers-to-settle";
import { verdictOf } from "../../../src/engine/gaps/verdict";

const DRAWS = 40_000;

/** The same by drawing: a true gap, what new testers say of it, and the verdict of both together. */
function drawnChance({ mean, variance, varianceAfter }: Parameters<typeof chanceSettled>[0]): number {
  const random = seededRandom(12);
  const dataVariance = 1 / (1 / varianceAfter - 1 / variance);
  let settled = 0;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    const truth = mean + Math.sqrt(variance) * random.normal();
    const told = truth + Math.sqrt(dataVariance) * random.normal();
    const gap = varianceAfter * (mean / variance + told / dataVariance);
    const sd = Math.sqrt(varianceAfter);
    const chanceOff = normalChance((-1 - gap) / sd) + normalChance((gap - 1) / sd);
    const verdict = verdictOf({ gap, tolerance: 1, chanceOff });
    settled += Number(verdict === "off" || verdict === "holds");
  }
  return settled / DRAWS;
}

describe("the chance that more testers settle a cell", () => {
  it.each([
    [0, 0.5, 0.1],
    [0.8, 0.3, 0.05],
    [1.2, 0.2, 0.08],
    [-1.6, 0.4, 0.2],
    [0.1, 1, 0.7],
  ])("is that of drawing their readings: gap %d, variance %d, then %d", (mean, variance, varianceAfter) => {
    const cell = { mean, variance, varianceAfter };
    expect(Math.abs(chanceSettled(cell) - drawnChance(cell))).toBeLessThan(4 * Math.sqrt(0.25 / DRAWS));
  });

  it("is certain, one way or the other, where nothing more is learned", () => {
    expect(chanceSettled({ mean: 0.9, variance: 0.1, varianceAfter: 0.1 })).toBe(0);
    expect(chanceSettled({ mean: 2, variance: 0.1, varianceAfter: 0.1 })).toBe(1);
    expect(chanceSettled({ mean: 0, variance: 0.1, varianceAfter: 0.1 })).toBe(1);
  });
});

describe("the number of testers that settles a cell in four cases in five", () => {
  // A tester measures it with a standard deviation of half a tolerance.
  const variancesWithMore = Array.from({ length: 31 }, (_, testers) => 1 / (2.5 + 4 * testers));
  const told = (mean: number, chanceReported = 1) =>
    settling({ mean, variance: 0.4, variancesWithMore, chanceReported });

  it("is larger where the gap is nearer the edge of the tolerance, and none at the edge itself", () => {
    const numbers = [0, 0.2, 0.4].map((mean) => told(mean).testersToSettle ?? Number.NaN);
    expect(numbers[0]).toBeGreaterThan(0);
    expect(numbers).toEqual(numbers.toSorted((left, right) => left - right));
    expect(new Set(numbers).size).toBe(3);
    const known = Array.from({ length: 31 }, (_, testers) => 1 / (100 + 4 * testers));
    const edge = { mean: 1, variance: 0.01, variancesWithMore: known, chanceReported: 1 };
    expect(settling(edge).testersToSettle).toBeNull();
  });

  it("is the first that reaches it", () => {
    const { testersToSettle } = told(0.2);
    const chance = (testers: number) =>
      chanceSettled({ mean: 0.2, variance: 0.4, varianceAfter: variancesWithMore[testers] ?? Number.NaN });
    expect(chance(testersToSettle ?? 0)).toBeGreaterThanOrEqual(0.8);
    expect(chance((testersToSettle ?? 0) - 1)).toBeLessThan(0.8);
    expect(told(0.2).chanceWithThree).toBeCloseTo(chance(3), 12);
  });

  it("is larger where testers leave measurements out", () => {
    expect(told(0.2, 0.5).testersToSettle ?? 31).toBeGreaterThan(told(0.2).testersToSettle ?? 0);
  });
});
