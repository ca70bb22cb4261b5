import type { PatternDocument } from "@/engine/pattern";
import { csvText } from "@/server/csv";
import { lengthCell } from "@/ui/format-length";
import type { GapBoard } from "./gap-board";
import { plannedLengths } from "./planned-lengths";

/**
 * The cells as a table for a spreadsheet: a head line, then a line per cell, lengths as shown in the reader's unit.
 *
 * @param pattern what the cells are compared with. The measured length is at the pattern's own gauge, as the difference is: each tester's gauge is taken out of both.
 */
export function gapsCsv({ rows, unit }: Pick<GapBoard, "rows" | "unit">, pattern: PatternDocument): string {
  const planned = plannedLengths(pattern);
  const lines = rows.flatMap(({ measurement, cells }) =>
    cells.map(({ size, cell, words }) => {
      const { plannedCm, measuredCm } = planned(measurement.id, cell);
      return {
        letter: measurement.letter,
        measurement: measurement.label,
        size: size.label,
        [`planned (${unit})`]: lengthCell(plannedCm, unit),
        [`measured (${unit})`]: lengthCell(measuredCm, unit),
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
