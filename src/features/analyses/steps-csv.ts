import Papa from "papaparse";
import { fromCm, type LengthUnit } from "@/engine/units";
import type { LoadedAnalysis } from "./loaders";

/** Every reading from target to measurement as a table for a spreadsheet, lengths unrounded in the reader's unit. */
export function stepsCsv({ document, output, names }: LoadedAnalysis, unit: LengthUnit): string {
  const sizes = new Map(document.testers.map(({ id, size }) => [id, size]));
  const labels = new Map(document.pattern.sizes.map(({ id, label }) => [id, label]));
  const measurements = new Map(document.pattern.measurements.map((measurement) => [measurement.id, measurement]));
  const lines = output.steps.map((step) => ({
    tester: names.get(step.tester) ?? step.tester,
    size: labels.get(sizes.get(step.tester) ?? "") ?? "",
    letter: measurements.get(step.measurement)?.letter ?? "",
    measurement: measurements.get(step.measurement)?.label ?? step.measurement,
    [`target ${unit}`]: step.targetCm === null ? "" : fromCm(step.targetCm, unit),
    [`as designed ${unit}`]: fromCm(step.designCm, unit),
    [`worked otherwise ${unit}`]: fromCm(step.workedStepCm, unit),
    [`her gauge explains ${unit}`]: fromCm(step.gaugeStepCm, unit),
    [`what it does not ${unit}`]: fromCm(step.gapCm, unit),
    [`her measurement ${unit}`]: fromCm(step.readingCm, unit),
  }));
  return Papa.unparse(lines, { escapeFormulae: true });
}
