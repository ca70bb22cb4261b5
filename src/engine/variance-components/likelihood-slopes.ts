import { at } from "../linear-algebra";
import type { SurfaceSolution } from "./solve-surface";
import type { GroupPosterior, SurfacePosterior } from "./surface-posterior";

/**
 * Derivatives of the log likelihood by the logs of the standard deviations.
 *
 * An effect's: Σ E[effect²] ÷ variance − how many (the identity that EM rests on). A block-level one's: by the readings' information.
 *
 * @returns one slope a standard deviation; 0 where it is 0, for the likelihood is even in it.
 */
export function likelihoodSlopes(solution: SurfaceSolution, posterior: SurfacePosterior): Float64Array {
  const slopes = new Float64Array(solution.sds.length);
  addSharedSlopes(slopes, solution, posterior);
  addCellSlope(slopes, solution, posterior);
  addBlockSlopes(slopes, solution, posterior);
  return slopes;
}

function addSharedSlopes(
  slopes: Float64Array,
  { surface, sds, shared }: SurfaceSolution,
  { sharedVariances }: SurfacePosterior,
): void {
  surface.columns.forEach((column, index) => {
    if (column.kind !== "fitted" || at(sds, column.sd) === 0) return;
    const variance = at(sds, column.sd) ** 2;
    const square = at(shared, index) ** 2 + at(sharedVariances, index);
    slopes[column.sd] = at(slopes, column.sd) + square / variance - 1;
  });
}

function addCellSlope(
  slopes: Float64Array,
  { surface, cellVariance, groups }: SurfaceSolution,
  posterior: SurfacePosterior,
): void {
  if (surface.cellSd === null || cellVariance === 0) return;
  let squares = 0;
  let cells = 0;
  for (const { ownSquares } of posterior.groups) squares += ownSquares;
  for (const { rows } of groups) cells += rows.length;
  slopes[surface.cellSd] = at(slopes, surface.cellSd) + squares / cellVariance - cells;
}

function addBlockSlopes(
  slopes: Float64Array,
  { information, sds }: SurfaceSolution,
  posterior: SurfacePosterior,
): void {
  for (let sd = 0; sd < slopes.length; sd += 1) {
    let byVariance = at(information.constantSlopes, sd);
    information.groups.forEach(({ precisionSlopes, rightSlopes }, index) => {
      const precision = precisionSlopes[sd];
      const right = rightSlopes[sd];
      const group = posterior.groups[index];
      if (precision && right && group) byVariance += expectedSlope(group, precision, right);
    });
    slopes[sd] = at(slopes, sd) - byVariance * at(sds, sd) ** 2;
  }
}

/** E[gᵀ·precision·g] − 2·E[g]ᵀ·right. */
function expectedSlope({ mean, covariance }: GroupPosterior, precision: Float64Array, right: Float64Array): number {
  const cells = mean.length;
  let sum = 0;
  for (let i = 0; i < cells; i += 1) {
    sum -= 2 * at(mean, i) * at(right, i);
    for (let j = 0; j < cells; j += 1) {
      sum += at(precision, i * cells + j) * (at(covariance, i * cells + j) + at(mean, i) * at(mean, j));
    }
  }
  return sum;
}
