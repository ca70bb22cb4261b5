import type { Cell } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";

/** A length as the pattern plans it and as testers measured it, at the pattern's own gauge, cm; null where it is not known. */
interface PlannedLength {
  readonly plannedCm: number | null;
  readonly measuredCm: number | null;
}

/** The planned and measured length of each cell: a tester's own gauge is taken out, as it is of the difference. */
export function plannedLengths(pattern: PatternDocument): (measurement: string, cell: Cell) => PlannedLength {
  const planned = new Map(
    finishedMeasurements(pattern).flatMap(({ measurement: { id }, sizes }) =>
      sizes.map(({ size, designCm }) => [`${size} ${id}`, designCm]),
    ),
  );
  return (measurement, { size, gapCm, reports }) => {
    const plannedCm = planned.get(`${size} ${measurement}`) ?? null;
    return { plannedCm, measuredCm: plannedCm === null || gapCm === null || reports === 0 ? null : plannedCm + gapCm };
  };
}
