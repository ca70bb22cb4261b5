import { at } from "../linear-algebra";
import type { SurfaceSolution } from "./solve-surface";
import type { GroupPosterior, SurfacePosterior } from "./surface-posterior";

export interface LikelihoodSlopes {
  /** Derivatives of the log likelihood by the logs of the standard deviations; 0 where one is 0, because the likelihood is even in it. */
  readonly slopes: Float64Array;
  /** Effective degrees of freedom of each set of effects: the sum of their shrinkage factors, 0 to their number. */
  readonly effectiveDegrees: Float64Array;
}

/**
 * Slopes of the log likelihood at a solution.
 *
 * @param blockLevel whether to compute slopes of block-level standard deviations, which need the posterior's covariances; 0 otherwise.
 *
 * For effects: Σ E[effect²] ÷ variance − their number (the identity behind EM). For block-level ones: from the readings' information.
 */
export function likelihoodSlopes(
  solution: SurfaceSolution,
  posterior: SurfacePosterior,
  { blockLevel } = { blockLevel: true },
): LikelihoodSlopes {
  const result = {
    slopes: new Float64Array(solution.sds.length),
    effectiveDegrees: new Float64Array(solution.sds.length),
  };
  addSharedSlopes(result, solution, posterior);
  addCellSlope(result, solution, posterior);
  if (blockLevel) addBlockSlopes(result, solution, posterior);
  return result;
}

function add(
  { slopes, effectiveDegrees }: LikelihoodSlopes,
  sd: number,
  part: { slope: number; determined: number },
): void {
  slopes[sd] = at(slopes, sd) + part.slope;
  effectiveDegrees[sd] = at(effectiveDegrees, sd) + part.determined;
}

function addSharedSlopes(
  result: LikelihoodSlopes,
  { surface, sds, shared }: SurfaceSolution,
  { sharedVariances }: SurfacePosterior,
): void {
  surface.columns.forEach((column, index) => {
    if (column.kind !== "fitted" || at(sds, column.sd) === 0) return;
    const left = at(sharedVariances, index) / at(sds, column.sd) ** 2;
    add(result, column.sd, { slope: (at(shared, index) / at(sds, column.sd)) ** 2 + left - 1, determined: 1 - left });
  });
}

function addCellSlope(
  result: LikelihoodSlopes,
  { surface, cellVariance, groups }: SurfaceSolution,
  posterior: SurfacePosterior,
): void {
  if (surface.cellSd === null || cellVariance === 0) return;
  let squares = 0;
  let left = 0;
  let cells = 0;
  for (const { ownSquares, ownVariance } of posterior.groups) {
    squares += ownSquares;
    left += ownVariance;
  }
  for (const { rows } of groups) cells += rows.cells;
  add(result, surface.cellSd, { slope: squares / cellVariance - cells, determined: cells - left / cellVariance });
}

function addBlockSlopes(
  result: LikelihoodSlopes,
  { information, sds }: SurfaceSolution,
  posterior: SurfacePosterior,
): void {
  for (let sd = 0; sd < sds.length; sd += 1) {
    let trace = at(information.traceSlopes, sd);
    let square = at(information.squareSlopes, sd);
    information.groups.forEach(({ precisionSlopes, rightSlopes }, index) => {
      const precision = precisionSlopes[sd];
      const right = rightSlopes[sd];
      const group = posterior.groups[index];
      if (precision === undefined || right === undefined || group === undefined) return;
      const expected = expectedSlopes(group, precision, right);
      trace += expected.trace;
      square += expected.square;
    });
    const variance = at(sds, sd) ** 2;
    add(result, sd, { slope: -(trace + square) * variance, determined: trace * variance });
  }
}

/** By the cells' uncertainty: tr(precision·covariance); by their means: mᵀ·precision·m − 2·mᵀ·right. */
function expectedSlopes({ mean, covariance }: GroupPosterior, precision: Float64Array, right: Float64Array) {
  const cells = mean.length;
  let trace = 0;
  let square = 0;
  for (let i = 0; i < cells; i += 1) {
    let along = -2 * at(right, i);
    for (let j = 0; j < cells; j += 1) {
      trace += at(precision, i * cells + j) * at(covariance, i * cells + j);
      along += at(precision, i * cells + j) * at(mean, j);
    }
    square += at(mean, i) * along;
  }
  return { trace, square };
}
