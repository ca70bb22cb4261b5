import fc from "fast-check";
import { expect, it } from "vitest";
import type { FlatTerm, Term } from "@/engine/pattern";
import { explainMeasurement, indexPattern, predict } from "@/engine/prediction";
import { patternDocument } from "../../factories/pattern";

const times = fc.constantFrom(-2, -1, 0.5, 1, 2, 4);
const flat: fc.Arbitrary<FlatTerm> = fc.oneof(
  fc.record({ times, count: fc.constantFrom("width", "height"), stretched: fc.boolean() }),
  fc.record({ times, length: fc.constant("hem") }),
  fc.record({ times, allowance: fc.constant("edging") }),
);
const flats = fc.array(flat, { maxLength: 3 });
const term: fc.Arbitrary<Term> = fc.oneof(
  flat,
  fc.record({ times, diagonal: fc.record({ across: flats, along: flats }) }),
);
const factor = fc.double({ min: 0.8, max: 1.25, noNaN: true });

it("adds up, line by line, to the design value of the prediction", () => {
  let cases = 0;
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 6 }), factor, factor, (terms, settles, stretch) => {
      const pattern = patternDocument({
        fabrics: [
          {
            id: "main",
            label: "Main",
            toolMm: 4,
            gauge: { stitches: 17, rows: 23, overCm: 10.16 },
            settles: { across: settles, along: 1 / settles },
            wornStretch: { across: stretch, along: 1 / stretch },
          },
        ],
        lengths: [{ id: "hem", label: "Hem", cm: { small: 4, large: 5 } }],
        measurements: [{ id: "m", letter: "A", label: "M", how: "", toleranceCm: 1, terms }],
      });
      const [measurement] = pattern.measurements;
      for (const size of pattern.sizes) {
        if (measurement === undefined) throw new Error("there is one measurement");
        const { lines, designCm } = explainMeasurement(indexPattern(pattern), measurement, size);
        const predicted = predict({ pattern, size: size.id }).measurements[0]?.designCm;
        expect(lines.reduce((sum, line) => sum + line.term.cm, 0)).toBeCloseTo(predicted ?? NaN, 9);
        expect(lines.at(-1)?.totalCm).toBe(designCm);
        cases += 1;
      }
    }),
    { numRuns: 200 },
  );
  expect(cases).toBe(400);
});

it("tells a count's own numbers", () => {
  const pattern = patternDocument();
  const [bust] = pattern.measurements;
  const [small] = pattern.sizes;
  if (bust === undefined || small === undefined) throw new Error("the factory has both");
  // By hand: 2 × 98 ÷ 2 = 98 cm, and 2 × 1 cm of edging.
  expect(explainMeasurement(indexPattern(pattern), bust, small)).toMatchObject({
    lines: [
      { term: { value: 98, perCm: 2, cm: 98 }, totalCm: 98 },
      { term: { eachCm: 1, cm: 2 }, totalCm: 100 },
    ],
    designCm: 100,
    targetCm: 100,
  });
});
