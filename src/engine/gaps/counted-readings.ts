import type { CallDocument, Measurement, PatternDocument, Reading, Tester } from "../pattern";
import type { MeasurementPrediction, Prediction } from "../prediction";
import { predictTesters } from "./predict-testers";

/** A tester's counted readings of one measurement, with their mean and its prediction. */
export interface CountedReading {
  readonly tester: Tester;
  readonly measurement: Measurement;
  readonly prediction: MeasurementPrediction;
  readonly readings: readonly Reading[];
  readonly meanCm: number;
}

/**
 * The readings of a call that are counted: not of a measurement changed on purpose, not set aside, and not taken
 * unwashed unless a person decided to keep them. Repeated readings count by their mean.
 *
 * @param predictions of `predictTesters`, if the caller has them already.
 * @returns one entry a tester and measurement, testers in the call's order, measurements in the pattern's.
 * @see docs/method.md#readings-that-count.
 */
export function countedReadings(call: CallDocument, predictions = predictTesters(call)): CountedReading[] {
  return call.testers.flatMap((tester, index) => countedOfTester(call.pattern, tester, predictions[index]));
}

/** True if a reading is compared with its prediction. */
export function isCounted(tester: Tester, reading: Reading): boolean {
  return isCompared(tester, reading) && reading.decision !== "set-aside";
}

/** True if a reading can be compared: not of a measurement changed on purpose, nor unwashed unless a person decided to keep it. */
export function isCompared(tester: Tester, reading: Reading): boolean {
  if (tester.changed?.includes(reading.measurement)) return false;
  return reading.state !== "unwashed" || reading.decision === "keep";
}

function countedOfTester(
  { measurements }: PatternDocument,
  tester: Tester,
  predicted: Prediction | undefined,
): CountedReading[] {
  return measurements.flatMap((measurement, index) => {
    const readings = tester.readings.filter(
      (reading) => reading.measurement === measurement.id && isCounted(tester, reading),
    );
    const prediction = predicted?.measurements[index];
    if (readings.length === 0 || prediction === undefined) return [];
    const meanCm = readings.reduce((sum, { cm }) => sum + cm, 0) / readings.length;
    return [{ tester, measurement, prediction, readings, meanCm }];
  });
}
