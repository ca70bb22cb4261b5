import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { csvText } from "@/server/csv";
import { lengthCell } from "@/ui/format-length";
import type { TesterParts } from "../schema";

/** Every reading of the test from target to difference, a line per reading, lengths as shown in the reader's unit. */
export function stepsCsv(
  testers: readonly TesterParts<"steps">[],
  { pattern, unit }: { pattern: PatternDocument; unit: LengthUnit },
): string {
  const sizes = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  const measurements = new Map(pattern.measurements.map((measurement) => [measurement.id, measurement]));
  const length = (cm: number | null) => lengthCell(cm, unit);
  const lines = testers.flatMap(({ name, size, readings }) =>
    readings.map(({ step, notCounted, typedCm }) => {
      const measurement = measurements.get(step.measurement);
      return {
        tester: name,
        size: sizes.get(size) ?? size,
        letter: measurement?.letter ?? "",
        measurement: measurement?.label ?? step.measurement,
        [`target (${unit})`]: length(step.targetCm),
        [`planned (${unit})`]: length(step.designCm),
        [`from different counts (${unit})`]: length(step.workedStepCm),
        [`from own gauge (${unit})`]: length(step.gaugeStepCm),
        [`difference (${unit})`]: length(step.gapCm),
        [`measured (${unit})`]: length(typedCm ?? step.readingCm),
        [`value used instead (${unit})`]: typedCm === undefined ? "" : length(step.readingCm),
        included: notCounted === null ? "yes" : "no",
      };
    }),
  );
  return csvText(lines);
}
