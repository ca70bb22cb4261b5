import { gapReadings, gapSurface } from "../gaps";
import { sizeScale, type CallDocument, type PatternDocument } from "../pattern";
import type { PatternSds } from "../simulation";
import { gatherInformation, solveSurface, type SurfaceSolution } from "../variance-components";
import type { PlantedCall } from "./planted-call";

/**
 * The gap model without causes, at known variances instead of estimated ones.
 *
 * @param call in which excluded readings are set aside.
 * @returns the best linear unbiased prediction of the cells at these variances.
 */
export function solveKnown(call: CallDocument, planted: PlantedCall, patternSds: PatternSds): SurfaceSolution {
  const sds = Float64Array.of(
    patternSds.offset,
    patternSds.step,
    patternSds.cell,
    planted.driftSd,
    planted.driftSd,
    planted.readingSd,
  );
  const { readings } = gapReadings(call);
  const solution = solveSurface(gapSurface(call.pattern, []), gatherInformation(readings, sds), sds);
  if (solution === null) throw new RangeError("the variances are not finite");
  return solution;
}

/**
 * Root mean squares of a surface's offsets, steps and cells: the variances for which a linear prediction is most accurate.
 *
 * @param truth tolerances of cell (size s, measurement p) at `s * measurements + p`.
 */
export function sdsOfSurface(pattern: PatternDocument, truth: readonly number[]): PatternSds {
  const count = pattern.measurements.length;
  const bySize = sizeScale(pattern);
  const scale = pattern.sizes.map(({ id }) => bySize.get(id) ?? 0);
  const middle = scale.reduce((sum, z) => sum + z, 0) / scale.length;
  const spread = scale.reduce((sum, z) => sum + (z - middle) ** 2, 0);
  let offsets = 0;
  let steps = 0;
  let cells = 0;
  for (let p = 0; p < count; p += 1) {
    const values = scale.map((_, s) => truth[s * count + p] ?? 0);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const slope =
      spread === 0 ? 0 : values.reduce((sum, value, s) => sum + value * ((scale[s] ?? 0) - middle), 0) / spread;
    const offset = mean - slope * middle;
    offsets += offset ** 2;
    steps += slope ** 2;
    cells += values.reduce((sum, value, s) => sum + (value - offset - slope * (scale[s] ?? 0)) ** 2, 0);
  }
  return { offset: Math.sqrt(offsets / count), step: Math.sqrt(steps / count), cell: Math.sqrt(cells / truth.length) };
}
