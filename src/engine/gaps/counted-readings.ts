import type { CallDocument, Measurement, Reading, Tester } from "../pattern";
import { indexPattern, predictMeasurement, type MeasurementPrediction, type PatternIndex } from "../prediction";

/** A tester's readings of one measurement that count, with their mean and what it should have come to. */
export interface CountedReading {
  readonly tester: Tester;
  readonly measurement: Measurement;
  readonly prediction: MeasurementPrediction;
  readonly readings: readonly Reading[];
  readonly meanCm: number;
}

/**
 * The readings of a call that are compared: not of a measurement changed on purpose, not set aside, and not taken
 * unwashed unless a person keeps them. Repeated ones count by their mean.
 *
 * @returns one entry a tester and measurement, testers in the call's order, measurements in the pattern's.
 * @see design 4.1.
 */
export function countedReadings(call: CallDocument): CountedReading[] {
  const index = indexPattern(call.pattern);
  return call.testers.flatMap((tester) => countedOfTester(index, tester));
}

/** True where a reading is compared with its prediction. */
export function isCounted(tester: Tester, reading: Reading): boolean {
  return isCompared(tester, reading) && reading.decision !== "set-aside";
}

/** True where a reading could be compared: not of a measurement changed on purpose, nor unwashed unless a person keeps it. */
export function isCompared(tester: Tester, reading: Reading): boolean {
  if (tester.changed?.includes(reading.measurement)) return false;
  return reading.state !== "unwashed" || reading.decision === "keep";
}

function countedOfTester(index: PatternIndex, tester: Tester): CountedReading[] {
  const size = index.pattern.sizes.find(({ id }) => id === tester.size);
  if (size === undefined) throw new RangeError(`unknown size ${tester.size}`);
  return index.pattern.measurements.flatMap((measurement) => {
    const readings = tester.readings.filter(
      (reading) => reading.measurement === measurement.id && isCounted(tester, reading),
    );
    if (readings.length === 0) return [];
    const meanCm = readings.reduce((sum, { cm }) => sum + cm, 0) / readings.length;
    const prediction = predictMeasurement(index, { measurement, size, tester });
    return [{ tester, measurement, prediction, readings, meanCm }];
  });
}
