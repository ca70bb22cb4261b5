import { own, type PatternDocument } from "../pattern";
import { predict } from "../prediction";

/** What a measurement of one size comes to under a grading, at the pattern's gauge. */
export interface GradedMeasurement {
  readonly measurement: string;
  readonly size: string;
  readonly targetCm: number | null;
  readonly cm: number;
  /** (cm − target) in tolerances, null without a target. */
  readonly deviation: number | null;
}

/** What a grading is judged by, stage by stage; deviations in tolerances, the rest in stitches and rows. */
export interface GradingObjective {
  readonly beyond: number;
  readonly deviation: number;
  readonly unevenness: number;
  readonly sum: number;
}

/**
 * Every measurement in every size as a grading makes it.
 *
 * @param pattern with its whole grading.
 * @returns through sizes, in each through measurements, in the pattern's order.
 */
export function gradedMeasurements(pattern: PatternDocument): GradedMeasurement[] {
  return pattern.sizes.flatMap((size) =>
    predict({ pattern, size: size.id }).measurements.map(({ measurement, targetCm, designCm }, at) => {
      const toleranceCm = pattern.measurements[at]?.toleranceCm ?? Number.NaN;
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
 * How good a grading is, by the stages of docs/method.md#grading.
 *
 * @param pattern with its whole grading.
 * @param measurements what it comes to.
 * @param slack deviation that costs nothing, in tolerances.
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
    pattern.sizes.map((size) => own(own(pattern.grading, id), size.id) ?? Number.NaN),
  );
  return {
    beyond: over(1),
    deviation: over(slack),
    unevenness: counts.reduce((sum, values) => sum + unevenness(values), 0),
    sum: counts.flat().reduce((sum, value) => sum + value, 0),
  };
}

/** Σ |step − the step before| between neighbouring sizes. */
function unevenness(values: readonly number[]): number {
  let sum = 0;
  for (let at = 2; at < values.length; at += 1) {
    const [first, second, third] = values.slice(at - 2, at + 1);
    sum += Math.abs((third ?? Number.NaN) - 2 * (second ?? Number.NaN) + (first ?? Number.NaN));
  }
  return sum;
}
