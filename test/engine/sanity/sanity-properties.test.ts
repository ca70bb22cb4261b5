import fc from "fast-check";
import { expect, it } from "vitest";
import type { PatternDocument } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import { sanityRemarks } from "@/engine/sanity";
import { patternDocument } from "../../factories/pattern";

const [BUST] = patternDocument().measurements;

/** One count that makes one girth, at 20 stitches to 10 cm. */
function girthPattern(change: Partial<PatternDocument>, toleranceCm: number): PatternDocument {
  if (BUST === undefined) throw new Error("incomplete pattern");
  const measurements = [{ ...BUST, toleranceCm, terms: [{ times: 1, count: "width" }] }];
  return patternDocument({ measurements, ...change });
}

/** Whether some number that a repeat allows is within the tolerance, by trying every number. */
function reachable({ of, plus, targetCm, toleranceCm }: Record<"of" | "plus" | "targetCm" | "toleranceCm", number>) {
  for (let count = 1; count <= 600; count += 1) {
    const isAllowed = (((count - plus) % of) + of) % of === 0;
    if (isAllowed && Math.abs(count / 2 - targetCm) <= toleranceCm + 1e-9) return true;
  }
  return false;
}

it("asks about a repeat exactly where trying every number finds none, and proposes the coarsest that has one", () => {
  const asked = { yes: 0, no: 0 };
  const repeat = fc.record({ of: fc.integer({ min: 2, max: 60 }), plus: fc.integer({ min: 0, max: 9 }) });
  const targets = fc.tuple(fc.integer({ min: 60, max: 200 }), fc.integer({ min: 60, max: 200 }));
  fc.assert(
    fc.property(repeat, targets, fc.constantFrom(0.5, 1, 2, 3.5), (given, [small, large], toleranceCm) => {
      const counts = [{ id: "width", label: "Width", fabric: "main", direction: "stitches", repeat: given }] as const;
      const base = girthPattern({ counts, grading: {} }, toleranceCm);
      const measurements = base.measurements.map((one) => ({ ...one, target: { cm: { small, large } } }));
      const says = sanityRemarks({ ...base, measurements }, String).find(({ kind }) => kind === "coarse-repeat")?.says;
      const meets = (of: number) =>
        [small, large].every((targetCm) => reachable({ of, plus: given.plus, targetCm, toleranceCm }));
      expect(says === undefined).toBe(meets(given.of));
      asked[says === undefined ? "no" : "yes"] += 1;
      if (says === undefined) return;
      let coarsest = given.of - 1;
      while (!meets(coarsest)) coarsest -= 1;
      expect(says).toContain(` A multiple of ${coarsest}`);
    }),
    { numRuns: 300 },
  );
  expect(Math.min(asked.yes, asked.no)).toBeGreaterThan(20);
});

it("asks about no step of a pattern whose every size is within its tolerance (by the triangle inequality)", () => {
  let within = 0;
  const share = fc.double({ min: -1, max: 1, noNaN: true });
  const size = fc.record({ bust: fc.double({ min: 60, max: 170, noNaN: true }), off: share });
  fc.assert(
    fc.property(fc.array(size, { minLength: 2, maxLength: 12 }), fc.integer({ min: 1, max: 20 }), (made, easeCm) => {
      const width = made.map(({ bust, off }, index) => [`size-${index}`, Math.round(2 * (bust + easeCm + 1.7 * off))]);
      const sizes = made.map(({ bust }, index) => ({ id: `size-${index}`, label: `${index}`, body: { bust } }));
      const base = girthPattern({ sizes, grading: { width: Object.fromEntries(width) } }, 2);
      const target = { body: "bust", easeCm };
      const pattern = { ...base, measurements: base.measurements.map((one) => ({ ...one, target })) };
      const [finished] = finishedMeasurements(pattern);
      expect(finished?.sizes.every(({ deviationCm }) => Math.abs(deviationCm ?? Infinity) <= 2)).toBe(true);
      expect(sanityRemarks(pattern, String).filter(({ kind }) => kind === "step-and-body")).toEqual([]);
      within += 1;
    }),
  );
  expect(within).toBe(100);
});

it("tells everything at a place that exists, in a sentence without a number that is none", () => {
  let told = 0;
  const number = fc.double({ min: 0.1, max: 400, noNaN: true });
  fc.assert(
    fc.property(number, number, number, fc.integer({ min: 1, max: 400 }), (stitches, toolMm, bust, width) => {
      if (BUST === undefined) throw new Error("incomplete pattern");
      const pattern = girthPattern(
        {
          fabrics: [{ id: "main", label: "Main", toolMm, gauge: { stitches, rows: 25 } }],
          sizes: [
            { id: "small", label: "S", body: { bust } },
            { id: "large", label: "L", body: { bust: 100 } },
          ],
          grading: { width: { small: width, large: 200 }, height: { small: 1, large: 1 } },
        },
        1,
      );
      for (const { path, says } of sanityRemarks(pattern, (cm) => `${cm} cm`)) {
        told += 1;
        expect(path).toMatch(
          /^(sizes\[1\]\.body\.bust|fabrics\[0\]\.(toolMm|gauge\.\w+)|counts\[0\]|measurements\[0\](\.target\.easeCm)?)$/,
        );
        expect(says).not.toMatch(/NaN|Infinity|undefined|null/);
      }
    }),
  );
  expect(told).toBeGreaterThan(50);
});
