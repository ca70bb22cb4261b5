import Papa from "papaparse";
import type { LengthUnit } from "@/engine/units";
import { gaugeWidth } from "@/ui/format-gauge";
import type { FabricSwatches } from "./swatch-view";

/** Every swatch as a line for a spreadsheet, gauges unrounded over the reader's width. */
export function swatchesCsv(fabrics: readonly FabricSwatches[], unit: LengthUnit): string {
  const { words } = gaugeWidth(unit);
  const lines = fabrics.flatMap(({ fabric, rows, gauges }) =>
    rows.map((row) => ({
      fabric: fabric.label,
      tester: row.name,
      size: row.size,
      "tool mm": row.toolMm,
      [`stitches to ${words}`]: row.stitches,
      [`stated stitches to ${words}`]: gauges.find(({ direction }) => direction === "stitches")?.stated ?? "",
      [`rows to ${words}`]: row.rows,
      [`stated rows to ${words}`]: gauges.find(({ direction }) => direction === "rows")?.stated ?? "",
      washed: row.washed ? "yes" : "no",
      "on the garment": row.onGarment ? "yes" : "no",
      "counts for": row.use,
    })),
  );
  return Papa.unparse(lines, { escapeFormulae: true });
}
