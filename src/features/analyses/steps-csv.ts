import Papa from "papaparse";
import type { PatternDocument } from "@/engine/pattern";
import { fromCm, type LengthUnit } from "@/engine/units";
import type { TesterParts } from "./schema";

/** Every reading of the call from target to gap, a line a reading, lengths unrounded in the reader's unit. */
export function stepsCsv(
  testers: readonly TesterParts<"steps">[],
  { pattern, unit }: { pattern: PatternDocument; unit: LengthUnit },
): string {
  const sizes = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  const measurements = new Map(pattern.measurements.map((measurement) => [measurement.id, measurement]));
  const length = (cm: number) => fromCm(cm, unit);
  const lines = testers.flatMap(({ name, size, readings }) =>
    readings.map(({ step, notCounted }) => {
      const measurement = measurements.get(step.measurement);
      return {
        tester: name,
        size: sizes.get(size) ?? size,
        letter: measurement?.letter ?? "",
        measurement: measurement?.label ?? step.measurement,
        [`target ${unit}`]: step.targetCm === null ? "" : length(step.targetCm),
        [`as designed ${unit}`]: length(step.designCm),
        [`worked otherwise ${unit}`]: length(step.workedStepCm),
        [`her gauge explains ${unit}`]: length(step.gaugeStepCm),
        [`what it does not ${unit}`]: length(step.gapCm),
        [`her measurement ${unit}`]: length(step.readingCm),
        counts: notCounted === null ? "yes" : "no",
      };
    }),
  );
  return Papa.unparse(lines, { escapeFormulae: true });
}
