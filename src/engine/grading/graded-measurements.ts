import { ownValue, type PatternDocument } from "../pattern";
import { finishedMeasurements } from "../prediction";
import { solvedCounts } from "./count-groups";

/** A measurement of one size under a grading, at the pattern's gauge. */
export interface GradedMeasurement {
  readonly measurement: string;
  readonly size: string;
  readonly targetCm: number | null;
  readonly cm: number;
  /** (cm − target) in tolerances, null without a target. */
  readonly deviation: number | null;
}

/** The objective values of a grading, stage by stage; deviations in tolerances, the rest in stitches and rows. */
export interface GradingObjective {
  readonly beyond: number;
  readonly deviation: number;
  readonly unevenness: number;
  readonly sum: number;
}

/**
 * Every measurement in every size under a grading, but for those of a count that has no number.
 *
 * @param pattern with a grading, which may leave counts out.
 * @returns through sizes, in each through measurements, in the pattern's order.
 */
export function gradedMeasurements(pattern: PatternDocument): GradedMeasurement[] {
  const finished = finishedMeasurements(pattern);
  return pattern.sizes.flatMap((size, index) =>
    finished.flatMap(({ measurement: { id, toleranceCm }, sizes }) => {
      const { designCm = null, targetCm = null } = sizes[index] ?? {};
      if (designCm === null) return [];
      const deviation = targetCm === null ? null : (designCm - targetCm) / toleranceCm;
      return [{ measurement: id, size: size.id, targetCm, cm: designCm, deviation }];
    }),
  );
}

/**
 * Objective values of a grading, by its stages: of the measurements that are solved for, and of the counts that have numbers.
 *
 * @param pattern with a grading, which may leave counts out.
 * @param measurements its measurements.
 * @param slack deviation without cost, in tolerances.
 */
export function gradingObjective(
  pattern: PatternDocument,
  measurements: readonly GradedMeasurement[],
  slack: number,
): GradingObjective {
  const solved = new Set(pattern.measurements.flatMap((given) => (solvedCounts(given).length > 0 ? [given.id] : [])));
  const deviations = measurements.flatMap(({ measurement, deviation }) =>
    deviation === null || !solved.has(measurement) ? [] : [deviation],
  );
  const over = (free: number) =>
    deviations.reduce((sum, deviation) => sum + Math.max(0, Math.abs(deviation) - free), 0);
  const counts = pattern.counts.flatMap(({ id }) => {
    const numbers = ownValue(pattern.grading, id);
    return numbers === undefined ? [] : [pattern.sizes.map((size) => ownValue(numbers, size.id) ?? Number.NaN)];
  });
  return {
    beyond: over(1),
    deviation: over(slack),
    unevenness: counts.reduce((sum, values) => sum + unevenness(values), 0),
    sum: counts.flat().reduce((sum, value) => sum + value, 0),
  };
}

/** Sum of absolute second differences over the sizes. */
function unevenness(values: readonly number[]): number {
  let sum = 0;
  for (let index = 2; index < values.length; index += 1) {
    const [first, second, third] = values.slice(index - 2, index + 1);
    sum += Math.abs((third ?? Number.NaN) - 2 * (second ?? Number.NaN) + (first ?? Number.NaN));
  }
  return sum;
}
