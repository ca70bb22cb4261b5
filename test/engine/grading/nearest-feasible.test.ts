import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nearestFeasible } from "@/engine/grading";
import { gradingWarnings, type PatternDocument } from "@/engine/pattern";
import { count, oneSize } from "../../factories/one-size";
import { patternDocument } from "../../factories/pattern";

describe("the nearest numbers that keep a count's rules", () => {
  const pattern = () =>
    oneSize([count("yoke", { repeat: { of: 10, plus: 3 } }), count("front"), count("back")], {
      ties: [
        {
          count: "yoke",
          within: 3,
          equals: [
            { times: 1, count: "front" },
            { times: 2, count: "back" },
          ],
        },
      ],
      grading: { yoke: { one: 163 }, front: { one: 60 }, back: { one: 50 } },
    });

  it("are those of its repeat and its ties, with all other numbers unchanged", () => {
    expect(nearestFeasible(pattern(), { count: "yoke", size: "one", typed: 158 })).toEqual({ below: null, above: 163 });
    // 163 less 2 × 50 is 63, give or take 3.
    expect(nearestFeasible(pattern(), { count: "front", size: "one", typed: 70 })).toEqual({ below: 66, above: null });
    expect(nearestFeasible(pattern(), { count: "front", size: "one", typed: 64 })).toEqual({ below: 64, above: 64 });
  });

  it("always meet every rule, and no number closer to the typed one does", () => {
    const small = fc.record({ of: fc.integer({ min: 1, max: 12 }), plus: fc.nat(11), typed: fc.nat(200) });
    fc.assert(
      fc.property(small, ({ of, plus, typed }) => {
        const found = nearestFeasible(oneSize([count("front", { repeat: { of, plus } })]), {
          count: "front",
          size: "one",
          typed,
        });
        const keeps = (number: number) => number >= 1 && (number - plus) % of === 0;
        const numbers = Array.from({ length: 230 }, (_, number) => number).filter(keeps);
        expect(found.below).toBe(numbers.findLast((number) => number <= typed) ?? null);
        expect(found.above).toBe(numbers.find((number) => number >= typed));
      }),
    );
  });

  it("are those next to the typed one under which a grading has no warning, of all tried", () => {
    const ran = { found: 0, none: 0 };
    const drawn = fc.record({
      of: fc.integer({ min: 1, max: 5 }),
      plus: fc.nat(4),
      times: fc.constantFrom(-2, -1, 1, 2, 3),
      per: fc.integer({ min: 1, max: 3 }),
      within: fc.nat(6),
      smaller: fc.nat(30),
      larger: fc.integer({ min: 25, max: 60 }),
      other: fc.integer({ min: 1, max: 60 }),
      typed: fc.nat(70),
    });
    fc.assert(
      fc.property(drawn, ({ of, plus, times, per, within, smaller, larger, other, typed }) => {
        const withNumber = (number: number): PatternDocument =>
          patternDocument({
            sizes: ["s", "m", "l"].map((id, index) => ({ id, label: id, body: { bust: 80 + index } })),
            counts: [count("front", { repeat: { of, plus } }), count("back", { mayShrink: true })],
            // Every size is tied; what the other two are warned of is no matter of the middle one.
            ties: [{ count: "back", per, within, equals: [{ times, count: "front" }] }],
            measurements: [],
            grading: { front: { s: smaller, m: number, l: larger }, back: { s: 1, m: other, l: 1 } },
          });
        const keeps = (number: number) =>
          !gradingWarnings(withNumber(number)).some(
            ({ path, says }) =>
              path === "grading.front.m" ||
              says.startsWith("in m,") ||
              (path === "grading.front.l" && says.includes("less than")),
          );
        const kept = Array.from({ length: 140 }, (_, number) => number).filter(keeps);
        const found = nearestFeasible(withNumber(0), { count: "front", size: "m", typed });
        expect(found).toEqual({
          below: kept.findLast((number) => number <= typed) ?? null,
          above: kept.find((number) => number >= typed) ?? null,
        });
        if (kept.length > 0) ran.found += 1;
        else ran.none += 1;
      }),
      { numRuns: 400 },
    );
    expect(ran.found + ran.none).toBe(400);
    expect(ran.found).toBeGreaterThan(40);
  });
});
