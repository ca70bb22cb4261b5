import type { LengthUnit } from "@/engine/units";
import { csvText } from "@/server/csv";
import { gaugeWidth } from "@/ui/format-gauge";
import type { FabricSwatches } from "./swatch-view";

/** Every swatch as a line for a spreadsheet, with unrounded gauges over the reader's width. */
export function swatchesCsv(fabrics: readonly FabricSwatches[], unit: LengthUnit): string {
  const { words } = gaugeWidth(unit);
  const isCountedBefore = fabrics.some(({ rows }) => rows.some(({ growth }) => growth !== undefined));
  const lines = fabrics.flatMap(({ fabric, rows, gauges }) =>
    rows.map((row) => ({
      fabric: fabric.label,
      tester: row.name,
      size: row.size,
      "needle or hook (mm)": row.toolMm,
      [`stitches over ${words}`]: row.stitches,
      [`pattern's stitches over ${words}`]: gauges.find(({ direction }) => direction === "stitches")?.stated ?? "",
      [`rows over ${words}`]: row.rows,
      [`pattern's rows over ${words}`]: gauges.find(({ direction }) => direction === "rows")?.stated ?? "",
      washed: row.washed ? "yes" : "no",
      ...(isCountedBefore ? { "longer by blocking ×": row.growth?.along ?? "" } : {}),
      "on the garment": row.onGarment ? "yes" : "no",
      "counts for": row.use,
    })),
  );
  return csvText(lines);
}
