import { countedReadings, settleCall, type CountedReading, type Step } from "@/engine/gaps";
import type { Fabric, Measurement, Size, Swatch } from "@/engine/pattern";
import { chooseSwatch, explainMeasurement, indexPattern, type Explanation } from "@/engine/prediction";
import type { LoadedAnalysis } from "./loaders";

/** One reading of the call that counts, with all that it is reckoned from. */
export interface MethodExample {
  readonly name: string;
  readonly size: Size;
  readonly measurement: Measurement;
  readonly swatches: readonly { readonly fabric: Fabric; readonly swatch: Swatch }[];
  readonly explanation: Explanation;
  readonly prediction: CountedReading["prediction"];
  readonly step: Step;
  /** How many readings of hers the step's reading is the mean of. */
  readonly readings: number;
}

/** What one makes of a cell, from the crudest to the estimate, cm. */
export interface PlainAverage {
  readonly size: Size;
  readonly measurement: Measurement;
  readonly testers: readonly { readonly name: string; readonly crudeCm: number; readonly gapCm: number }[];
  /** Readings less what the pattern makes of it, whatever the testers' gauges. */
  readonly crudeCm: number;
  /** Readings less what each tester's own gauge and counts predict. */
  readonly gaugedCm: number;
  readonly estimateCm: number;
  readonly lowCm: number;
  readonly highCm: number;
}

/** The reading to follow step by step: of those with a swatch, the one whose gauge explains most beside a clear gap. */
export function methodExample(analysis: LoadedAnalysis): MethodExample | null {
  const { document, names } = analysis;
  const [best] = countedReadings(settleCall(document).call)
    .filter(({ tester }) => document.pattern.fabrics.some(({ id }) => chooseSwatch(tester.swatches, id) !== undefined))
    .toSorted((left, right) => tellingness(right) - tellingness(left));
  const size = document.pattern.sizes.find(({ id }) => id === best?.tester.size);
  if (best === undefined || size === undefined) return null;
  const { tester, measurement, prediction, meanCm, readings } = best;
  return {
    name: names.get(tester.id) ?? tester.id,
    size,
    measurement,
    swatches: document.pattern.fabrics.flatMap((fabric) => {
      const swatch = chooseSwatch(tester.swatches, fabric.id);
      return swatch ? [{ fabric, swatch }] : [];
    }),
    explanation: explainMeasurement(indexPattern(document.pattern), measurement, size),
    prediction,
    step: stepOf(best, meanCm),
    readings: readings.length,
  };
}

/** The cell whose plain average misleads most; null where no cell has two reports. */
export function plainAverage({ document, output, names }: LoadedAnalysis): PlainAverage | null {
  const { sizes, measurements } = document.pattern;
  const counted = countedReadings(settleCall(document).call);
  const found = output.cells.flatMap(({ size: sizeId, measurement: id, gapCm, lowCm, highCm }): PlainAverage[] => {
    const size = sizes.find((given) => given.id === sizeId);
    const measurement = measurements.find((given) => given.id === id);
    const own = counted.filter(({ tester, measurement: of }) => tester.size === sizeId && of.id === id);
    if (size === undefined || measurement === undefined || own.length < 2) return [];
    if (gapCm === null || lowCm === null || highCm === null) return [];
    const testers = own.map(({ tester, meanCm, prediction }) => ({
      name: names.get(tester.id) ?? tester.id,
      crudeCm: meanCm - prediction.designCm,
      gapCm: meanCm - prediction.predictedCm,
    }));
    const mean = (value: (tester: (typeof testers)[number]) => number) =>
      testers.reduce((sum, tester) => sum + value(tester), 0) / testers.length;
    return [
      {
        ...{ size, measurement, testers, estimateCm: gapCm, lowCm, highCm },
        crudeCm: mean(({ crudeCm }) => crudeCm),
        gaugedCm: mean((tester) => tester.gapCm),
      },
    ];
  });
  const misled = ({ crudeCm, estimateCm, measurement }: PlainAverage) =>
    Math.abs(crudeCm - estimateCm) / measurement.toleranceCm;
  return found.toSorted((left, right) => misled(right) - misled(left))[0] ?? null;
}

/** A reading tells most where both her gauge and what it leaves are worth seeing, in tolerances. */
function tellingness({ meanCm, prediction, measurement }: CountedReading): number {
  const gauge = Math.abs(prediction.predictedCm - prediction.workedCm);
  const gap = Math.abs(meanCm - prediction.predictedCm);
  return Math.min(gauge, gap) / measurement.toleranceCm;
}

function stepOf({ tester, measurement, prediction }: CountedReading, meanCm: number): Step {
  const { targetCm, designCm, workedCm, predictedCm } = prediction;
  return {
    ...{ tester: tester.id, measurement: measurement.id, targetCm, designCm, readingCm: meanCm },
    workedStepCm: workedCm - designCm,
    gaugeStepCm: predictedCm - workedCm,
    gapCm: meanCm - predictedCm,
  };
}
