import type { CallDocument } from "../pattern";
import { indexPattern, predict } from "../prediction";
import type { Step } from "./gaps-output";

/**
 * From target to reading, for every reading: what the pattern makes of the target, what she worked otherwise, what her
 * gauge did, and what is left.
 *
 * @returns one row a reading, in the call's order, counted or not; designCm + workedStepCm + gaugeStepCm + gapCm = readingCm.
 * @see design 4.1.
 */
export function readingSteps(call: CallDocument): Step[] {
  const measurements = new Map(indexPattern(call.pattern).pattern.measurements.map(({ id }, at) => [id, at]));
  return call.testers.flatMap((tester) => {
    if (tester.readings.length === 0) return [];
    const predictions = predict({ pattern: call.pattern, size: tester.size, tester }).measurements;
    return tester.readings.flatMap(({ measurement, cm }) => {
      const prediction = predictions[measurements.get(measurement) ?? -1];
      if (prediction === undefined) return [];
      const { targetCm, designCm, workedCm, predictedCm } = prediction;
      return [
        {
          tester: tester.id,
          measurement,
          targetCm,
          designCm,
          workedStepCm: workedCm - designCm,
          gaugeStepCm: predictedCm - workedCm,
          gapCm: cm - predictedCm,
          readingCm: cm,
        },
      ];
    });
  });
}
