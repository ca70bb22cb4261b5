import { mandelH, mandelK, standardDeviation } from "../consistency";
import type { CallDocument } from "../pattern";
import type { CountedReading } from "./counted-readings";
import type { TesterFinding } from "./gaps-output";
import type { GapEstimate } from "./estimate-gaps";

/**
 * Each tester's drift and consistency: Mandel's h over the gaps of all sizes, k over repeated readings, by measurement.
 *
 * @param counted counted readings, one entry per tester and measurement.
 * @param estimate with drifts and mistakes by tester id.
 * @see ISO 5725-2:1994, 7.3.1; docs/method.md#measuring-habits.
 */
export function testerFindings(
  { pattern, testers }: CallDocument,
  counted: readonly CountedReading[],
  { drifts, mistakes }: Pick<GapEstimate, "drifts" | "mistakes">,
): TesterFinding[] {
  const byMeasurement = new Map(
    pattern.measurements.map(({ id }) => [
      id,
      consistencyOf(counted.filter(({ measurement }) => measurement.id === id)),
    ]),
  );
  return testers.map(({ id }) => {
    const drift = drifts.get(id);
    return {
      tester: id,
      driftAcross: drift?.across ?? null,
      driftAlong: drift?.along ?? null,
      chance: mistakes.get(id)?.all ?? null,
      measurements: pattern.measurements.map(({ id: measurement }) => ({
        measurement,
        h: byMeasurement.get(measurement)?.h.get(id) ?? null,
        k: byMeasurement.get(measurement)?.k.get(id) ?? null,
      })),
    };
  });
}

function consistencyOf(counted: readonly CountedReading[]) {
  const gaps = counted.map(
    ({ meanCm, prediction, measurement }) => (meanCm - prediction.predictedCm) / measurement.toleranceCm,
  );
  const repeated = counted.filter(({ readings }) => readings.length > 1);
  const sds = repeated.map(({ readings, measurement }) =>
    standardDeviation(readings.map(({ cm }) => cm / measurement.toleranceCm)),
  );
  return { h: byTester(counted, mandelH(gaps)), k: byTester(repeated, mandelK(sds)) };
}

function byTester(
  counted: readonly CountedReading[],
  values: readonly (number | null)[],
): ReadonlyMap<string, number | null> {
  return new Map(counted.map(({ tester }, index) => [tester.id, values[index] ?? null]));
}
