import type { CallDocument } from "../pattern";
import { predictTesters } from "./predict-testers";
import type { Step } from "./gaps-output";

/**
 * From target to reading, for every reading: the design, the tester's changes to the counts, the effect of their
 * gauge, and the remaining gap.
 *
 * @param predictions of `predictTesters`, where the caller needs them too.
 * @returns one row a reading, in the call's order, counted or not; designCm + workedStepCm + gaugeStepCm + gapCm = readingCm.
 * @see docs/method.md#steps-of-a-gap.
 */
export function readingSteps(call: CallDocument, predictions = predictTesters(call)): Step[] {
  const measurements = new Map(call.pattern.measurements.map(({ id }, index) => [id, index]));
  return call.testers.flatMap((tester, index) =>
    tester.readings.flatMap(({ measurement, cm }) => {
      const prediction = predictions[index]?.measurements[measurements.get(measurement) ?? -1];
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
    }),
  );
}
