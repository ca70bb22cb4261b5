import { countsOfTerm, ownValue, type Measurement, type PatternDocument } from "../pattern";
import { measure, targetCm } from "./measure";
import { indexPattern } from "./pattern-index";
import { patternWorking } from "./working";

/** One measurement in one size as the pattern makes it, cm. */
export interface FinishedMeasurement {
  readonly size: string;
  /** Null where a count that it needs has no value yet. */
  readonly designCm: number | null;
  readonly targetCm: number | null;
  /** Design less target; null where either is. */
  readonly deviationCm: number | null;
}

/**
 * Every finished measurement in every size, compared with its target.
 *
 * @param pattern a parsed pattern; counts may still be without values.
 * @returns rows in the pattern's order of measurements, each through its sizes.
 */
export function finishedMeasurements(pattern: PatternDocument): readonly FinishedRow[] {
  const before = known.get(pattern);
  if (before !== undefined) return before;
  const rows = finishedRows(pattern);
  known.set(pattern, rows);
  return rows;
}

interface FinishedRow {
  readonly measurement: Measurement;
  readonly sizes: readonly FinishedMeasurement[];
}

/** Tables, remarks and drawings of one pattern all begin with these. */
const known = new WeakMap<PatternDocument, readonly FinishedRow[]>();

function finishedRows(pattern: PatternDocument): readonly FinishedRow[] {
  const index = indexPattern(pattern);
  const workings = pattern.sizes.map(({ id }) => patternWorking(index, id));
  return pattern.measurements.map((measurement) => {
    const graded = measurement.terms.flatMap(countsOfTerm).map((count) => ownValue(pattern.grading, count));
    const sizes = pattern.sizes.map((size, place) => {
      const working = workings[place];
      const isWhole = graded.every((numbers) => ownValue(numbers, size.id) !== undefined);
      const designCm = isWhole && working !== undefined ? measure(index, measurement, working).cm : null;
      const target = targetCm(measurement, size);
      const deviationCm = designCm === null || target === null ? null : designCm - target;
      return { size: size.id, designCm, targetCm: target, deviationCm };
    });
    return { measurement, sizes };
  });
}
