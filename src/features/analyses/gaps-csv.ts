import Papa from "papaparse";
import { fromCm, type LengthUnit } from "@/engine/units";
import type { GapBoard } from "./gap-board";

/** The cells as a table for a spreadsheet: a head line, then a line a cell, lengths unrounded in the reader's unit. */
export function gapsCsv({ rows, unit }: Pick<GapBoard, "rows" | "unit">): string {
  const lines = rows.flatMap(({ measurement, cells }) =>
    cells.map(({ size, cell, words }) => ({
      letter: measurement.letter,
      measurement: measurement.label,
      size: size.label,
      [`gap ${unit}`]: inUnit(cell.gapCm, unit),
      [`from ${unit}`]: inUnit(cell.lowCm, unit),
      [`to ${unit}`]: inUnit(cell.highCm, unit),
      reports: cell.reports,
      verdict: words,
    })),
  );
  return Papa.unparse(lines, { escapeFormulae: true });
}

function inUnit(cm: number | null, unit: LengthUnit): number | "" {
  return cm === null ? "" : fromCm(cm, unit);
}
