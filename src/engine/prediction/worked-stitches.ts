import { usedStitches, type GarmentStitches } from "../garment";
import { countsOfStep, lengthsOfStep, ownValue, type PatternDocument } from "../pattern";
import type { PatternIndex } from "./pattern-index";
import type { Working } from "./working";

/** Makers who follow the pattern work the same stitches: by pattern, those of each size and set of numbers. */
const known = new WeakMap<PatternDocument, Map<string, GarmentStitches>>();

/**
 * Stitches of a garment as it is worked: with these counts, and to these lengths at this gauge.
 *
 * @param working numbers of a size as the pattern has them, or of a tester.
 * @returns stitches by piece, fabric and yarn, and what of the garment cannot be worked with these numbers.
 * @throws {RangeError} for a count without a value, which the documents' checks rule out.
 */
export function workedStitches({ pattern }: PatternIndex, working: Working): GarmentStitches {
  const made = madeOf(pattern);
  const counts = made.counts.map((id) => [id, working.countOf(id)] as const);
  const ruled = made.lengths.length === 0 ? null : ruledNumbers(pattern, working);
  const key = JSON.stringify([working.size, counts.map(([, number]) => number), ruled]);
  const ofPattern = known.get(pattern) ?? new Map<string, GarmentStitches>();
  known.set(pattern, ofPattern);
  const before = ofPattern.get(key);
  if (before !== undefined) return before;
  const stitches = usedStitches(
    {
      ...pattern,
      ...ruled,
      grading: {
        ...pattern.grading,
        ...Object.fromEntries(
          counts.map(([id, number]) => [id, { ...ownValue(pattern.grading, id), [working.size]: number }]),
        ),
      },
    },
    working.size,
  );
  ofPattern.set(key, stitches);
  return stitches;
}

/** The counts and lengths that a garment is made of. */
function madeOf({ garment: { steps } }: PatternDocument) {
  return { counts: [...new Set(steps.flatMap(countsOfStep))], lengths: steps.flatMap(lengthsOfStep) };
}

/** What decides how many rows a length has: the length, how it grows, and the gauge. */
function ruledNumbers(
  { fabrics, lengths = [] }: PatternDocument,
  { lengthCmOf, growthOf, gaugeOf }: Working,
): Pick<PatternDocument, "fabrics" | "lengths"> {
  return {
    fabrics: fabrics.map((fabric) => {
      const { stitchesPerCm, rowsPerCm } = gaugeOf(fabric.id);
      return { ...fabric, gauge: { stitches: stitchesPerCm, rows: rowsPerCm, overCm: 1 } };
    }),
    lengths: lengths.map((length) => {
      const growth = growthOf(length.fabric ?? fabrics[0]?.id ?? "") ?? length.growth;
      return { ...length, cm: lengthCmOf(length.id), ...(growth === undefined ? {} : { growth }) };
    }),
  };
}
