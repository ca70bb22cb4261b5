import {
  countsOfStep,
  countsOfTerm,
  lengthsOfStep,
  lengthsOfTerm,
  type Measurement,
  type PatternDocument,
  type Size,
} from "../pattern";

/** What reports made under an earlier pattern can be compared with in a later one. */
export interface CarriedOver {
  readonly sizes: readonly Size[];
  /** Every number that they are made of was worked then, and a girth is still a girth. */
  readonly measurements: readonly Measurement[];
  /** Every stitch of a piece was worked then, so that yarn can be compared. */
  readonly yarn: boolean;
}

/**
 * What of a pattern's reports keeps its meaning against a later revision: a count or a length that did not exist then, or that
 * was worked in another fabric or direction, was not worked by those testers, and nothing that is made of it can be predicted
 * for them.
 *
 * @param earlier the pattern that the reports followed.
 * @param pattern the later one.
 * @returns sizes and measurements of the later one, in its order.
 * @see docs/method.md#earlier-tests.
 */
export function carriedOver(earlier: PatternDocument, pattern: PatternDocument): CarriedOver {
  const sizes = new Set(earlier.sizes.map(({ id }) => id));
  const measured = new Map(earlier.measurements.map(({ id, girth }) => [id, girth === true]));
  const worked = workedIn(earlier);
  const isWorked = (id: string) => worked.has(countKey(pattern, id));
  const lengths = new Set(earlier.lengths?.map(({ id }) => id));
  return {
    sizes: pattern.sizes.filter(({ id }) => sizes.has(id)),
    measurements: pattern.measurements.filter(
      ({ id, girth, terms }) =>
        measured.get(id) === (girth === true) &&
        terms.every(
          (term) => countsOfTerm(term).every(isWorked) && lengthsOfTerm(term).every((length) => lengths.has(length)),
        ),
    ),
    yarn: pattern.garment.steps.every(
      (step) => countsOfStep(step).every(isWorked) && lengthsOfStep(step).every((length) => lengths.has(length)),
    ),
  };
}

function workedIn(pattern: PatternDocument): ReadonlySet<string> {
  return new Set(pattern.counts.map(({ id }) => countKey(pattern, id)));
}

/** The same count: worked in the same fabric, in the same direction. */
function countKey({ counts }: PatternDocument, id: string): string {
  const count = counts.find((one) => one.id === id);
  return `${id} ${count?.fabric ?? ""} ${count?.direction ?? ""}`;
}
