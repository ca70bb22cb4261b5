import type { CallDocument, Measurement, PatternDocument, Reading, Tester } from "../pattern";
import type { MeasurementPrediction, Prediction } from "../prediction";
import { predictTesters } from "./predict-testers";

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
 * @param predictions of `predictTesters`, where the caller needs them too.
 * @returns one entry a tester and measurement, testers in the call's order, measurements in the pattern's.
 * @see docs/method.md#readings-that-count.
 */
export function countedReadings(call: CallDocument, predictions = predictTesters(call)): CountedReading[] {
  return call.testers.flatMap((tester, at) => countedOfTester(call.pattern, tester, predictions[at]));
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

function countedOfTester(
  { measurements }: PatternDocument,
  tester: Tester,
  predicted: Prediction | undefined,
): CountedReading[] {
  return measurements.flatMap((measurement, at) => {
    const readings = tester.readings.filter(
      (reading) => reading.measurement === measurement.id && isCounted(tester, reading),
    );
    const prediction = predicted?.measurements[at];
    if (readings.length === 0 || prediction === undefined) return [];
    const meanCm = readings.reduce((sum, { cm }) => sum + cm, 0) / readings.length;
    return [{ tester, measurement, prediction, readings, meanCm }];
  });
}
