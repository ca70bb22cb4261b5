import { at, type Matrix } from "../linear-algebra";
import { gatherInformation } from "./gather-information";
import { likelihoodSlopes } from "./likelihood-slopes";
import { solveSurface } from "./solve-surface";
import { surfacePosterior } from "./surface-posterior";
import type { Readings, Surface } from "./variance-model";

/** In a log standard deviation: small beside its uncertainty, large beside rounding. */
const STEP = 1e-3;

/**
 * Curvature of the log likelihood by the logs of the standard deviations: central differences of its exact slopes.
 *
 * @param sds at which; all above 0, in the values' unit.
 * @returns the negative Hessian (the observed information), sd i and j at `i * sds + j`, symmetric; null where a number is not
 *   finite.
 * @see Efron & Hinkley 1978 for observed information.
 */
export function likelihoodCurvature(given: {
  readonly readings: Readings;
  readonly surface: Surface;
  readonly sds: Float64Array;
}): Matrix | null {
  const size = given.sds.length;
  const values = new Float64Array(size * size);
  for (let sd = 0; sd < size; sd += 1) {
    const above = slopesAt(given, sd, STEP);
    const below = slopesAt(given, sd, -STEP);
    if (above === null || below === null) return null;
    for (let other = 0; other < size; other += 1) {
      const half = (at(below, other) - at(above, other)) / (4 * STEP);
      values[sd * size + other] = at(values, sd * size + other) + half;
      values[other * size + sd] = at(values, other * size + sd) + half;
    }
  }
  return values.every(Number.isFinite) ? { rows: size, columns: size, values } : null;
}

function slopesAt(
  { readings, surface, sds }: Parameters<typeof likelihoodCurvature>[0],
  moved: number,
  step: number,
): Float64Array | null {
  const there = sds.map((sd, index) => (index === moved ? sd * Math.exp(step) : sd));
  const solution = solveSurface(surface, gatherInformation(readings, there), there);
  return solution === null ? null : likelihoodSlopes(solution, surfacePosterior(solution)).slopes;
}
