import Papa from "papaparse";
import { isCounted, settleCall } from "@/engine/gaps";
import { fromCm, type LengthUnit } from "@/engine/units";
import type { LoadedAnalysis } from "./loaders";

/** Every reading of the call from target to gap, a line a reading, lengths unrounded in the reader's unit. */
export function stepsCsv({ document, output, names }: LoadedAnalysis, unit: LengthUnit): string {
  const sizes = new Map(document.pattern.sizes.map(({ id, label }) => [id, label]));
  const measurements = new Map(document.pattern.measurements.map((measurement) => [measurement.id, measurement]));
  const readings = settleCall(document).call.testers.flatMap((tester) =>
    tester.readings.map((reading) => ({ tester, reading })),
  );
  const length = (cm: number) => fromCm(cm, unit);
  const lines = output.steps.flatMap((step, at) => {
    const found = readings[at];
    if (found === undefined) return [];
    const measurement = measurements.get(step.measurement);
    return [
      {
        tester: names.get(step.tester) ?? step.tester,
        size: sizes.get(found.tester.size) ?? found.tester.size,
        letter: measurement?.letter ?? "",
        measurement: measurement?.label ?? step.measurement,
        [`target ${unit}`]: step.targetCm === null ? "" : length(step.targetCm),
        [`as designed ${unit}`]: length(step.designCm),
        [`worked otherwise ${unit}`]: length(step.workedStepCm),
        [`her gauge explains ${unit}`]: length(step.gaugeStepCm),
        [`what it does not ${unit}`]: length(step.gapCm),
        [`her measurement ${unit}`]: length(step.readingCm),
        counts: isCounted(found.tester, found.reading) ? "yes" : "no",
      },
    ];
  });
  return Papa.unparse(lines, { escapeFormulae: true });
}
