import Link from "next/link";
import { memo } from "react";
import type { PatternDocument } from "@/engine/pattern";
import { finishedMeasurements, type FinishedMeasurement } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatChangeNumber, formatLength, formatLengthNumber } from "@/ui/format-length";
import { MatrixTable } from "@/ui/matrix-table";

interface FinishedTableProps {
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  /** Address of the pattern; with it, measurements link to their calculation. */
  readonly home?: string;
  /** True where it is redrawn at each key. */
  readonly isLive?: boolean;
}

/** Each finished measurement in each size, and how far it is from its target. */
export function FinishedTable({ pattern, unit, home, isLive = false }: FinishedTableProps) {
  const rows = finishedMeasurements(pattern).map(({ measurement, sizes }) => ({
    key: measurement.id,
    head: (
      <>
        <span className="font-semibold">{measurement.letter}</span>{" "}
        {home ? (
          <Link href={`${home}/measurements/${measurement.id}`} className="text-link">
            {measurement.label}
          </Link>
        ) : (
          measurement.label
        )}
        <span className="block text-sm text-soft">within {formatLength(measurement.toleranceCm, unit)}</span>
      </>
    ),
    cells: sizes.map((finished) => (
      <FinishedCell
        key={finished.size}
        designCm={finished.designCm}
        deviationCm={finished.deviationCm}
        toleranceCm={measurement.toleranceCm}
        unit={unit}
      />
    )),
  }));
  return (
    <>
      <MatrixTable
        label="Finished measurements"
        corner={`Measurement, ${unit}`}
        columns={pattern.sizes.map(({ id, label }) => ({ key: id, label }))}
        rows={rows}
        isLive={isLive}
      />
      <p className="mt-2 text-sm text-soft">
        Top: the length at the pattern’s gauge. Below: the difference from the target, <b>▲</b> if it is more than the
        tolerance.
      </p>
    </>
  );
}

interface FinishedCellProps extends Pick<FinishedMeasurement, "designCm" | "deviationCm"> {
  readonly toleranceCm: number;
  readonly unit: LengthUnit;
}

/** Drawn again only where its own number changes. */
const FinishedCell = memo(function FinishedCell({ designCm, deviationCm, toleranceCm, unit }: FinishedCellProps) {
  if (designCm === null) return <span className="text-soft">no counts</span>;
  const isOff = deviationCm !== null && Math.abs(deviationCm) > toleranceCm;
  return (
    <>
      <span className="numbers whitespace-nowrap">{formatLengthNumber(designCm, unit)}</span>
      {deviationCm === null ? (
        <span className="block text-sm text-soft">no target</span>
      ) : (
        <span
          className={`numbers block whitespace-nowrap text-sm ${isOff ? "font-semibold text-thread" : "text-soft"}`}
        >
          {isOff ? <span aria-label="more than the tolerance:">▲ </span> : null}
          {formatChangeNumber(deviationCm, unit)}
        </span>
      )}
    </>
  );
});
