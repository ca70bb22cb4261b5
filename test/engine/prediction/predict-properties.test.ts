import fc from "fast-check";
import { expect, it } from "vitest";
import type { FlatTerm, Term } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import { patternDocument, swatch, tester } from "../../factories/pattern";

const times = fc.integer({ min: -3, max: 4 });
const flat: fc.Arbitrary<FlatTerm> = fc.oneof(
  fc.record({ times, count: fc.constantFrom("width", "height") }),
  fc.record({ times, allowance: fc.constant("edging") }),
);
const side = fc.array(flat, { maxLength: 3 });
const term: fc.Arbitrary<Term> = fc.oneof(
  flat,
  fc.record({ times, diagonal: fc.record({ across: side, along: side }) }),
);

it("adds up: across + along + rest is the prediction", () => {
  let ran = 0;
  const gauge = fc.double({ min: 5, max: 60, noNaN: true });
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), gauge, gauge, (terms, stitches, rows) => {
      const [bust] = patternDocument().measurements;
      if (bust === undefined) throw new Error("incomplete pattern");
      const pattern = patternDocument({ measurements: [{ ...bust, terms }] });
      const reported = tester({ swatches: [swatch({ stitches, rows })] });
      const [made] = predict({ pattern, size: "small", tester: reported }).measurements;
      if (made === undefined) throw new Error("no prediction");
      const size = Math.abs(made.acrossCm) + Math.abs(made.alongCm) + Math.abs(made.restCm) + 1;
      expect(Math.abs(made.acrossCm + made.alongCm + made.restCm - made.predictedCm)).toBeLessThan(1e-12 * size);
      expect(Object.values(made).every((value) => typeof value !== "number" || Number.isFinite(value))).toBe(true);
      ran += 1;
    }),
  );
  expect(ran).toBeGreaterThanOrEqual(100);
});

it("has the derivative it says: a gauge a hair denser moves a prediction by its part", () => {
  const step = 1e-5;
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (terms) => {
      const [bust] = patternDocument().measurements;
      if (bust === undefined) throw new Error("incomplete pattern");
      const pattern = patternDocument({ measurements: [{ ...bust, terms }] });
      const at = (stitches: number) => {
        const reported = tester({ swatches: [swatch({ stitches })] });
        const [made] = predict({ pattern, size: "small", tester: reported }).measurements;
        if (made === undefined) throw new Error("no prediction");
        return made;
      };
      // d prediction ÷ d ln gauge = −across, by a central difference: its error goes with the square of the step.
      const slope = (at(20 * Math.exp(step)).predictedCm - at(20 * Math.exp(-step)).predictedCm) / (2 * step);
      expect(Math.abs(slope + at(20).acrossCm)).toBeLessThan(1e-3);
    }),
    { numRuns: 1_000 },
  );
});
