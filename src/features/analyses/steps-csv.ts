import { isCounted, settleCall } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import { csvText } from "@/server/csv-text";
import { lengthCell } from "@/ui/length-cell";
import type { LoadedAnalysis } from "./loaders";

/** Every reading of the test from target to difference, a line a reading, lengths as they are shown in the reader's unit. */
export function stepsCsv({ document, output, names }: LoadedAnalysis, unit: LengthUnit): string {
  const sizes = new Map(document.pattern.sizes.map(({ id, label }) => [id, label]));
  const measurements = new Map(document.pattern.measurements.map((measurement) => [measurement.id, measurement]));
  const readings = settleCall(document).call.testers.flatMap((tester) =>
    tester.readings.map((reading) => ({ tester, reading })),
  );
  const length = (cm: number | null) => lengthCell(cm, unit);
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
        [`target (${unit})`]: length(step.targetCm),
        [`planned (${unit})`]: length(step.designCm),
        [`from different counts (${unit})`]: length(step.workedStepCm),
        [`from own gauge (${unit})`]: length(step.gaugeStepCm),
        [`difference (${unit})`]: length(step.gapCm),
        [`measured (${unit})`]: length(step.readingCm),
        included: isCounted(found.tester, found.reading) ? "yes" : "no",
      },
    ];
  });
  return csvText(lines);
}
