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
export function finishedMeasurements(
  pattern: PatternDocument,
): { readonly measurement: Measurement; readonly sizes: readonly FinishedMeasurement[] }[] {
  const index = indexPattern(pattern);
  return pattern.measurements.map((measurement) => {
    const counts = measurement.terms.flatMap(countsOfTerm);
    const sizes = pattern.sizes.map((size) => {
      const isWhole = counts.every((count) => ownValue(ownValue(pattern.grading, count), size.id) !== undefined);
      const designCm = isWhole ? measure(index, measurement, patternWorking(index, size.id)).cm : null;
      const target = targetCm(measurement, size);
      const deviationCm = designCm === null || target === null ? null : designCm - target;
      return { size: size.id, designCm, targetCm: target, deviationCm };
    });
    return { measurement, sizes };
  });
}
