import type { PatternDocument } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatLengthNumber } from "@/ui/format-length";
import { MatrixTable } from "@/ui/matrix-table";

/** What the garment measures in each size by the pattern's numbers. */
export function FinishedBySize({ pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit }) {
  const rows = finishedMeasurements(pattern).map(({ measurement, sizes }) => ({
    key: measurement.id,
    head: (
      <>
        <span className="font-semibold">{measurement.letter}</span> {measurement.label}
      </>
    ),
    cells: sizes.map(({ size, designCm }) => (
      <span key={size} className="numbers">
        {designCm === null ? <span className="text-soft">not yet</span> : formatLengthNumber(designCm, unit)}
      </span>
    )),
  }));
  return (
    <MatrixTable
      label="Finished measurements"
      corner={`Garment, ${unit}`}
      columns={pattern.sizes.map(({ id, label }) => ({ key: id, label }))}
      rows={rows}
    />
  );
}
