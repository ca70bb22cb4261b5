import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceOfFinishers, invitationsFor, invitationsWithin } from "@/engine/places";

describe("how many to invite", () => {
  it("counts the ways of finishing where every one is as likely as not", () => {
    // By hand, as heads of coins: at least 2 of 4 in 11 of 16 ways.
    expect(chanceOfFinishers({ invited: 4, finishers: 2, loss: 0.5 })).toBeCloseTo(11 / 16, 14);
    expect(chanceOfFinishers({ invited: 1, finishers: 2, loss: 0.5 })).toBe(0);
    expect(chanceOfFinishers({ invited: 0, finishers: 0, loss: 0.3 })).toBe(1);
    expect(chanceOfFinishers({ invited: 7, finishers: 7, loss: 0 })).toBe(1);
  });

  it("is enough at just the chance wanted", () => {
    expect(invitationsFor({ finishers: 1, loss: 0.2, chance: 0.8 })).toBe(1);
    expect(invitationsFor({ finishers: 2, loss: 0.5, chance: 11 / 16 })).toBe(4);
    expect(invitationsFor({ finishers: 0, loss: 0.5, chance: 0.8 })).toBe(0);
    expect(invitationsFor({ finishers: 3, loss: 0, chance: 0.99 })).toBe(3);
  });

  it("is exact for hundreds, whose single probabilities are smaller than a double can be", () => {
    // By the law of large numbers: 5 000 of 10 000 fair coins, with the middle term √(2 ÷ (π n)) halved.
    const middle = Math.sqrt(2 / (Math.PI * 10_000)) / 2;
    expect(chanceOfFinishers({ invited: 10_000, finishers: 5000, loss: 0.5 })).toBeCloseTo(0.5 + middle, 6);
  });

  it("returns null if no call could have so many", () => {
    expect(invitationsFor({ finishers: 3, loss: 0.9999, chance: 0.9 })).toBeNull();
    expect(invitationsFor({ finishers: 20_001, loss: 0, chance: 0.9 })).toBeNull();
  });

  it("is never advised beyond the most testers of a size", () => {
    expect(invitationsWithin(2, 3)).toEqual({ invite: 2, isEnough: true });
    expect(invitationsWithin(4, 3)).toEqual({ invite: 3, isEnough: false });
    expect(invitationsWithin(null, 3)).toEqual({ invite: 3, isEnough: false });
  });

  it("refuses numbers that mean nothing", () => {
    expect(() => invitationsFor({ finishers: 2.5, loss: 0.3, chance: 0.8 })).toThrow(RangeError);
    expect(() => invitationsFor({ finishers: 2, loss: 1, chance: 0.8 })).toThrow(RangeError);
    expect(() => invitationsFor({ finishers: 2, loss: Number.NaN, chance: 0.8 })).toThrow(RangeError);
    expect(() => invitationsFor({ finishers: 2, loss: 0.3, chance: 1 })).toThrow(RangeError);
    expect(() => chanceOfFinishers({ invited: -1, finishers: 2, loss: 0.3 })).toThrow(RangeError);
  });

  it("agrees with the plain sum of the binomial, and the number is the smallest that is enough", () => {
    let ran = 0;
    const wanted = fc.record({
      finishers: fc.integer({ min: 1, max: 12 }),
      loss: fc.integer({ min: 0, max: 90 }).map((percent) => percent / 100),
      chance: fc.integer({ min: 1, max: 99 }).map((percent) => percent / 100),
    });
    fc.assert(
      fc.property(wanted, ({ finishers, loss, chance }) => {
        const invited = invitationsFor({ finishers, loss, chance }) ?? Number.NaN;
        expect(plainSum({ invited, finishers, loss })).toBeGreaterThanOrEqual(chance - 1e-11);
        if (invited > finishers)
          expect(plainSum({ invited: invited - 1, finishers, loss })).toBeLessThan(chance + 1e-11);
        expect(chanceOfFinishers({ invited, finishers, loss })).toBeCloseTo(plainSum({ invited, finishers, loss }), 11);
        ran += 1;
      }),
      { numRuns: 1000 },
    );
    expect(ran).toBe(1000);
  }, 30_000);
});

/** Σ of C(n, k) (1 − loss)ᵏ lossⁿ⁻ᵏ from k = finishers on, coefficient by coefficient. */
function plainSum({ invited, finishers, loss }: { invited: number; finishers: number; loss: number }): number {
  let sum = 0;
  let ways = 1;
  for (let k = 0; k <= invited; k += 1) {
    if (k >= finishers) sum += ways * (1 - loss) ** k * loss ** (invited - k);
    ways = (ways * (invited - k)) / (k + 1);
  }
  return sum;
}
