import { sizeScale, type PatternDocument } from "../pattern";
import type { SeededRandom } from "../seeded-random";

/** Standard deviations of a pattern's own error, tolerances. */
export interface PatternSds {
  readonly offset: number;
  readonly step: number;
  readonly cell: number;
}

/**
 * A pattern's own error, drawn from the gap model: an offset and a step of each measurement, and a deviation of each cell.
 *
 * @returns tolerances of cell (size s, measurement p) at `s * measurements + p`.
 * @see docs/method.md#simulation.
 */
export function drawTruth(pattern: PatternDocument, sds: PatternSds, random: SeededRandom): number[] {
  const scale = sizeScale(pattern);
  const offsets = pattern.measurements.map(() => sds.offset * random.normal());
  const steps = pattern.measurements.map(() => sds.step * random.normal());
  return pattern.sizes.flatMap(({ id }) =>
    pattern.measurements.map(
      (_, index) => (offsets[index] ?? 0) + (steps[index] ?? 0) * (scale.get(id) ?? 0) + sds.cell * random.normal(),
    ),
  );
}
