import type { Cell } from "@/engine/gaps";
import type { Measurement } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { IntervalRuler } from "@/ui/interval-ruler";
import { cellState, verdictWords } from "../verdict-words";
import { cellEstimate, MARKS } from "../ruler-marks";

/** Every ruler beside the fit reaches so many tolerances to either side. */
export const FIT_REACH = 3;

interface FitGapProps {
  readonly cell: Cell;
  readonly measurement: Measurement;
  readonly unit: LengthUnit;
  /** The size's label. */
  readonly size: string;
}

/** The gap of what governs an area, to be read beside what testers say of it. */
export function FitGap({ cell, measurement, unit, size }: FitGapProps) {
  const estimate = cellEstimate(cell, { toleranceCm: measurement.toleranceCm, reach: FIT_REACH });
  const state = cellState(cell);
  return (
    <>
      <IntervalRuler mark={MARKS[state]} estimate={estimate} />
      <span className={`block text-center text-sm leading-tight ${state === "off" ? "font-semibold text-thread" : ""}`}>
        {verdictWords(cell, { unit, size })}
      </span>
    </>
  );
}
