import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dotLanes } from "@/ui/dot-lanes";

describe("lanes of dots", () => {
  it("put alike ones above each other and come down again where there is room", () => {
    // By hand, two apart: 0 and 1 need two lanes, 2 is free above 0 again, 3.5 above 1.
    expect(dotLanes([1, 0, 3.5, 2, 0], 2)).toEqual([2, 0, 1, 0, 1]);
  });

  it("never let two dots of a lane come nearer than they may", () => {
    let cases = 0;
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 2, maxLength: 60 }), (places) => {
        const lanes = dotLanes(places, 3);
        for (const lane of new Set(lanes)) {
          const own = places.filter((_, at) => lanes[at] === lane).toSorted((left, right) => left - right);
          own.slice(1).forEach((place, at) => expect(place - (own[at] ?? 0)).toBeGreaterThanOrEqual(3));
        }
        cases += 1;
      }),
      { seed: Number(process.env.SEED) },
    );
    expect(cases).toBe(100);
  });
});
