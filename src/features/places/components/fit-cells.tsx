import type { FitInSize } from "@/engine/places";
import type { LengthUnit } from "@/engine/units";
import { differenceWords, fitWord } from "../fit-words";

interface FitCellsProps {
  readonly fit: FitInSize | null;
  /** How many columns of body measurements there are. */
  readonly measurements: number;
  readonly unit: LengthUnit;
}

/** A body beside a size, a cell a measurement, and the fit in a word with its number. */
export function FitCells({ fit, measurements, unit }: FitCellsProps) {
  if (fit === null)
    return (
      <td colSpan={measurements + 1} className="text-soft">
        her body is not known here
      </td>
    );
  return (
    <>
      {fit.differences.map((difference) => (
        <td key={difference.measurement} className="min-w-28">
          {difference.beyondCm > 0 ? <span aria-hidden="true">▲ </span> : null}
          {differenceWords(difference, unit)}
        </td>
      ))}
      <td className="min-w-24 whitespace-nowrap">
        {fitWord(fit.bodyMisfit, measurements)} <span className="text-soft">({fit.misfit.toFixed(2)})</span>
      </td>
    </>
  );
}
