import { fitScaleWords } from "@/engine/reporting";
import type { LengthUnit } from "@/engine/units";
import { csvText } from "@/server/csv-text";
import type { FitArea } from "./fit-board";
import { verdictWords } from "./verdict-words";

/** Every answer as a line for a spreadsheet, beside how the measurements that govern its area came out. */
export function fitCsv(areas: readonly FitArea[], unit: LengthUnit): string {
  const lines = areas.flatMap((area) =>
    area.rows.flatMap(({ size, answers, cells }) =>
      answers.map(({ name, scale, says }) => ({
        area: area.label,
        size: size.label,
        tester: name,
        scale,
        feels: fitScaleWords(scale, area),
        says: says ?? "",
        differences: area.governing
          .map(({ label }, at) => {
            const cell = cells[at];
            return cell ? `${label}: ${verdictWords(cell, { unit, size: size.label })}` : label;
          })
          .join("; "),
      })),
    ),
  );
  return csvText(lines);
}
