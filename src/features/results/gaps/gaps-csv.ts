import { predict } from "@/engine/prediction";
import type { PatternDocument } from "@/engine/pattern";
import { csvText } from "@/server/csv";
import { lengthCell } from "@/ui/format-length";
import type { GapBoard } from "./gap-board";

/**
 * The cells as a table for a spreadsheet: a head line, then a line per cell, lengths as shown in the reader's unit.
 *
 * @param pattern what the cells are compared with. The measured length is at the pattern's own gauge, as the difference is: each tester's gauge is taken out of both.
 */
export function gapsCsv({ rows, unit }: Pick<GapBoard, "rows" | "unit">, pattern: PatternDocument): string {
  const planned = plannedLengths(pattern);
  const lines = rows.flatMap(({ measurement, cells }) =>
    cells.map(({ size, cell, words }) => {
      const plannedCm = planned.get(`${size.id} ${measurement.id}`) ?? null;
      const isMeasured = plannedCm !== null && cell.gapCm !== null && cell.reports > 0;
      return {
        letter: measurement.letter,
        measurement: measurement.label,
        size: size.label,
        [`planned (${unit})`]: lengthCell(plannedCm, unit),
        [`measured (${unit})`]: lengthCell(isMeasured ? plannedCm + (cell.gapCm ?? 0) : null, unit),
        [`difference (${unit})`]: lengthCell(cell.gapCm, unit),
        [`at least (${unit})`]: lengthCell(cell.lowCm, unit),
        [`at most (${unit})`]: lengthCell(cell.highCm, unit),
        reports: cell.reports,
        result: words,
      };
    }),
  );
  return csvText(lines);
}

/** The planned lengths by size and measurement, cm. */
function plannedLengths(pattern: PatternDocument): Map<string, number> {
  return new Map(
    pattern.sizes.flatMap(({ id: size }) =>
      predict({ pattern, size }).measurements.map(({ measurement, designCm }) => [`${size} ${measurement}`, designCm]),
    ),
  );
}
