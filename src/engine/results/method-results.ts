import { mean } from "../consistency";
import { causeCandidates, type CountedReading, type GapsOutput, type ScreenedCall, type Step } from "../gaps";
import type { CallDocument } from "../pattern";
import { chooseSwatch } from "../prediction";
import type { MethodResults } from "./call-results-schema";
import type { TesterResults } from "./tester-results-schema";
import { groupBy } from "./group-by";

interface Analysed {
  readonly screened: ScreenedCall["call"];
  readonly output: GapsOutput;
  readonly counted: readonly CountedReading[];
  readonly testers: readonly TesterResults[];
}

/** The numbers by which the method is explained with the call's own reports. */
export function methodResults({ screened, output, counted, testers }: Analysed): MethodResults {
  const reported = output.cells.map(({ reports }) => reports > 0);
  return {
    variances: output.variances,
    suspects: [...output.suspects],
    candidates: causeCandidates(screened.pattern, reported).length,
    readings: readingTally(counted, testers),
    example: methodExample(screened, counted),
    plainAverage: plainAverage(output, counted),
  };
}

function readingTally(
  counted: readonly CountedReading[],
  testers: readonly TesterResults[],
): MethodResults["readings"] {
  const left = { changed: 0, unwashed: 0, "set-aside": 0, slip: 0 };
  for (const { readings } of testers)
    for (const { notCounted } of readings) if (notCounted !== null) left[notCounted] += 1;
  return {
    all: testers.reduce((sum, { readings }) => sum + readings.length, 0),
    counted: counted.reduce((sum, { readings }) => sum + readings.length, 0),
    left,
  };
}

/** The reading to follow step by step: of those with a swatch, the one with a large effect of the gauge and a clear gap. */
function methodExample({ pattern }: CallDocument, counted: readonly CountedReading[]): MethodResults["example"] {
  const [best] = counted
    .filter(({ tester }) => pattern.fabrics.some(({ id }) => chooseSwatch(tester.swatches, id) !== undefined))
    .toSorted((left, right) => instructiveness(right) - instructiveness(left));
  if (best === undefined) return null;
  const { tester, measurement, prediction, readings } = best;
  return {
    ...{ tester: tester.id, size: tester.size, measurement: measurement.id },
    swatches: pattern.fabrics.flatMap((fabric) => {
      const swatch = chooseSwatch(tester.swatches, fabric.id);
      return swatch ? [{ fabric: fabric.id, swatch: { ...swatch } }] : [];
    }),
    prediction: { ...prediction },
    step: stepOf(best),
    readings: readings.length,
  };
}

/** A reading is most instructive if both the effect of the gauge and the remaining gap are visible, in tolerances. */
function instructiveness({ meanCm, prediction, measurement }: CountedReading): number {
  const gauge = Math.abs(prediction.predictedCm - prediction.workedCm);
  const difference = Math.abs(meanCm - prediction.predictedCm);
  return Math.min(gauge, difference) / measurement.toleranceCm;
}

function stepOf({ tester, measurement, prediction, meanCm }: CountedReading): Step {
  const { targetCm, designCm, workedCm, predictedCm } = prediction;
  return {
    ...{ tester: tester.id, measurement: measurement.id, targetCm, designCm, readingCm: meanCm },
    workedStepCm: workedCm - designCm,
    gaugeStepCm: predictedCm - workedCm,
    gapCm: meanCm - predictedCm,
  };
}

/** The cell whose plain average misleads most; null where no cell has two reports. */
function plainAverage({ cells }: GapsOutput, counted: readonly CountedReading[]): MethodResults["plainAverage"] {
  const byCell = groupBy(counted, ({ tester, measurement }) => `${tester.size} ${measurement.id}`);
  const found = cells.flatMap(({ size, measurement, gapCm, lowCm, highCm }) => {
    const own = byCell.get(`${size} ${measurement}`) ?? [];
    const [first] = own;
    if (first === undefined || own.length < 2 || gapCm === null || lowCm === null || highCm === null) return [];
    const testers = own.map(({ tester, meanCm, prediction }) => ({
      tester: tester.id,
      crudeCm: meanCm - prediction.designCm,
      gapCm: meanCm - prediction.predictedCm,
    }));
    const crudeCm = mean(testers.map((tester) => tester.crudeCm));
    const average = {
      ...{ size, measurement, testers, crudeCm, estimateCm: gapCm, lowCm, highCm },
      gaugedCm: mean(testers.map((tester) => tester.gapCm)),
    };
    return [{ average, misled: Math.abs(crudeCm - gapCm) / first.measurement.toleranceCm }];
  });
  return found.toSorted((left, right) => right.misled - left.misled)[0]?.average ?? null;
}
