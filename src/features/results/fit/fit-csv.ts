import type { PatternDocument } from "@/engine/pattern";
import { fitScaleLabel } from "@/engine/reporting";
import type { LengthUnit } from "@/engine/units";
import { csvText } from "@/server/csv";
import type { FitArea } from "./fit-board";
import type { FitAnswer } from "./fit-data";
import { verdictWords } from "../verdict-copy";

/** Every answer as a line for a spreadsheet, beside how the measurements that govern its area came out. */
export function fitCsv(
  answers: readonly FitAnswer[],
  { areas, pattern, unit }: { areas: readonly FitArea[]; pattern: PatternDocument; unit: LengthUnit },
): string {
  const lines = answers.flatMap(({ area: areaId, size: sizeId, name, scale, says }) => {
    const area = areas.find(({ id }) => id === areaId);
    const row = area?.rows.find(({ size }) => size.id === sizeId);
    const size = pattern.sizes.find(({ id }) => id === sizeId)?.label ?? sizeId;
    if (area === undefined) return [];
    const differences = area.governing.map((measurement, index) => {
      const cell = row?.cells[index];
      return cell ? `${measurement.label}: ${verdictWords(cell, { measurement, unit, size })}` : measurement.label;
    });
    return [
      {
        ...{ area: area.label, size, tester: name, scale, feels: fitScaleLabel(scale, area), says: says ?? "" },
        differences: differences.join("; "),
      },
    ];
  });
  return csvText(lines);
}
