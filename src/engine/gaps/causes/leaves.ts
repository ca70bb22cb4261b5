import type { FlatTerm, Measurement } from "../../pattern";
import { measureTerm, patternWorking, type PatternIndex, type Working } from "../../prediction";

/** One flat term of a measurement in a size of the pattern. */
export interface Leaf {
  readonly term: FlatTerm;
  /** The term's length, cm. */
  readonly cm: number;
  /** Derivative of the measurement by the term. */
  readonly factor: number;
}

/**
 * The flat terms of a measurement in a size, those inside a diagonal √(x² + y²) with its derivative.
 *
 * @returns leaves at the pattern's gauge and counts; the factors inside a diagonal of 0 are 0.
 */
export function leavesOf(index: PatternIndex, measurement: Measurement, size: string): Leaf[] {
  const working = patternWorking(index, size);
  return measurement.terms.flatMap((term) => {
    if (!("diagonal" in term)) return flatLeaves(index, [term], { working, factor: 1 });
    const across = flatLeaves(index, term.diagonal.across, { working, factor: 1 });
    const along = flatLeaves(index, term.diagonal.along, { working, factor: 1 });
    const x = across.reduce((sum, { cm }) => sum + cm, 0);
    const y = along.reduce((sum, { cm }) => sum + cm, 0);
    const hypotenuse = Math.hypot(x, y);
    if (hypotenuse === 0) return [...across, ...along].map((leaf) => ({ ...leaf, factor: 0 }));
    return [
      ...across.map((leaf) => ({ ...leaf, factor: (term.times * x) / hypotenuse })),
      ...along.map((leaf) => ({ ...leaf, factor: (term.times * y) / hypotenuse })),
    ];
  });
}

function flatLeaves(
  index: PatternIndex,
  terms: readonly FlatTerm[],
  { working, factor }: { working: Working; factor: number },
): Leaf[] {
  return terms.map((term) => ({ term, cm: measureTerm(index, term, working).cm, factor }));
}
