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
      const her = tester({ swatches: [swatch({ stitches, rows })] });
      const [made] = predict({ pattern, size: "small", tester: her }).measurements;
      if (made === undefined) throw new Error("no prediction");
      const size = Math.abs(made.acrossCm) + Math.abs(made.alongCm) + Math.abs(made.restCm) + 1;
      expect(Math.abs(made.acrossCm + made.alongCm + made.restCm - made.predictedCm)).toBeLessThan(1e-12 * size);
      expect(Object.values(made).every((value) => typeof value !== "number" || Number.isFinite(value))).toBe(true);
      ran += 1;
    }),
  );
  expect(ran).toBeGreaterThanOrEqual(100);
});

it("has the derivative it says: a gauge 0.01 % denser moves a prediction by its part", () => {
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (terms) => {
      const [bust] = patternDocument().measurements;
      if (bust === undefined) throw new Error("incomplete pattern");
      const pattern = patternDocument({ measurements: [{ ...bust, terms }] });
      const at = (stitches: number) =>
        predict({ pattern, size: "small", tester: tester({ swatches: [swatch({ stitches })] }) }).measurements[0];
      const before = at(20);
      const after = at(20.002);
      if (before === undefined || after === undefined) throw new Error("no prediction");
      // d prediction ÷ d ln gauge = −across.
      const moved = (after.predictedCm - before.predictedCm) / Math.log(20.002 / 20);
      expect(Math.abs(moved + before.acrossCm)).toBeLessThan(0.01 + 0.001 * Math.abs(before.acrossCm));
    }),
  );
});
