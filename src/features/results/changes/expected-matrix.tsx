import type { Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLengthNumber } from "@/ui/format-length";
import { MatrixTable } from "@/ui/matrix-table";
import type { PlannedCell, PlannedRow } from "./plan-outcome";
import { targetWords } from "../target-copy";
import { plain } from "../verdict-copy";

interface ExpectedMatrixProps {
  readonly rows: readonly PlannedRow[];
  readonly sizes: readonly Size[];
  readonly unit: LengthUnit;
}

/** Every measurement in every size: what it will be, compared with its target. */
export function ExpectedMatrix({ rows, sizes, unit }: ExpectedMatrixProps) {
  return (
    <MatrixTable
      label="Every measurement after the change"
      corner={`In ${unit}, at the pattern’s gauge`}
      columns={sizes.map(({ id, label }) => ({ key: id, label }))}
      rows={rows.map(({ measurement, cells }) => ({
        key: measurement.id,
        head: (
          <>
            {measurement.letter} {measurement.label}
            <span className="block text-sm text-soft">
              tolerance {plain(measurement.toleranceCm, unit)} {unit} either way
            </span>
          </>
        ),
        cells: cells.map((cell) => <Expected key={cell.size.id} cell={cell} unit={unit} />),
      }))}
    />
  );
}

function Expected({ cell, unit }: { readonly cell: PlannedCell; readonly unit: LengthUnit }) {
  const { targetCm, toleranceCm, before, after } = cell;
  const number = (cm: number) => formatLengthNumber(cm, unit);
  const missed = after.against === "missed";
  const moved = before.expectedCm === null || number(before.expectedCm) !== number(after.expectedCm);
  return (
    <span className="block min-w-22 leading-snug">
      <strong className="text-lg">{number(after.expectedCm)}</strong>
      {after.lowCm === null || after.highCm === null ? null : (
        <span className="block whitespace-nowrap text-xs text-soft">
          {number(after.lowCm)} to {number(after.highCm)}
        </span>
      )}
      <span className={`block text-sm ${missed ? "font-semibold text-thread" : ""}`}>
        {missed ? <span aria-hidden="true">▲ </span> : null}
        {targetWords({ expectedCm: after.expectedCm, targetCm, toleranceCm }, unit)}
      </span>
      {targetCm === null ? null : <span className="block text-sm text-soft">target {number(targetCm)}</span>}
      {moved && before.expectedCm !== null ? (
        <span className="block text-sm text-soft">now {number(before.expectedCm)}</span>
      ) : null}
    </span>
  );
}
