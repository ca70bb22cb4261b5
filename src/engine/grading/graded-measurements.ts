import { ownValue, type PatternDocument } from "../pattern";
import { predict } from "../prediction";

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
 * Every measurement in every size under a grading.
 *
 * @param pattern with a complete grading.
 * @returns through sizes, in each through measurements, in the pattern's order.
 */
export function gradedMeasurements(pattern: PatternDocument): GradedMeasurement[] {
  return pattern.sizes.flatMap((size) =>
    predict({ pattern, size: size.id }).measurements.map(({ measurement, targetCm, designCm }, index) => {
      const toleranceCm = pattern.measurements[index]?.toleranceCm ?? Number.NaN;
      return {
        measurement,
        size: size.id,
        targetCm,
        cm: designCm,
        deviation: targetCm === null ? null : (designCm - targetCm) / toleranceCm,
      };
    }),
  );
}

/**
 * Objective values of a grading, by the stages of 4.2.
 *
 * @param pattern with a complete grading.
 * @param measurements its measurements.
 * @param slack deviation without cost, in tolerances.
 */
export function gradingObjective(
  pattern: PatternDocument,
  measurements: readonly GradedMeasurement[],
  slack: number,
): GradingObjective {
  const deviations = measurements.flatMap(({ deviation }) => (deviation === null ? [] : [deviation]));
  const over = (free: number) =>
    deviations.reduce((sum, deviation) => sum + Math.max(0, Math.abs(deviation) - free), 0);
  const counts = pattern.counts.map(({ id }) =>
    pattern.sizes.map((size) => ownValue(ownValue(pattern.grading, id), size.id) ?? Number.NaN),
  );
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
