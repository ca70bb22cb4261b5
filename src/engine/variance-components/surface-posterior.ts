import {
  at,
  indexAt,
  inverseFromFactor,
  mirrorLower,
  rowProducts,
  symmetricRowProducts,
  transposed,
} from "../linear-algebra";
import { rowTimes } from "./cell-rows";
import { squareTrace, timesLowRank } from "./low-rank";
import type { SolvedGroup, SurfaceSolution } from "./solve-surface";
import type { CellRows } from "./variance-model";

/** Cells of one group given the readings: mean, and covariance of cells i and j at `i * cells + j`. */
export interface GroupPosterior {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  /** The cells' own deviations: Σ of mean² + variance, and of the variance alone. */
  readonly ownSquares: number;
  readonly ownVariance: number;
}

/** Shared columns given the readings, and the cells group by group. */
export interface SurfacePosterior {
  readonly sharedVariances: Float64Array;
  /** Of columns a and b at `a * columns + b`. */
  readonly sharedCovariance: Float64Array;
  readonly groups: readonly GroupPosterior[];
}

/**
 * Posterior of the shared columns and of the cells.
 *
 * @param covariances whether to compute the cells' covariances; they are empty otherwise.
 * @returns means and variances; the variances include the uncertainty of estimated fixed columns.
 */
export function surfacePosterior(solution: SurfaceSolution, { covariances } = { covariances: true }): SurfacePosterior {
  const shared = covarianceOfShared(solution);
  const size = solution.scales.length;
  return {
    sharedCovariance: shared,
    sharedVariances: solution.scales.map((_, column) => at(shared, column * size + column)),
    groups: solution.groups.map((group) => groupPosterior(solution, { group, shared, covariances })),
  };
}

/** S·M⁻¹·S. */
function covarianceOfShared({ sharedFactor, scales }: SurfaceSolution): Float64Array {
  const size = scales.length;
  const covariance = inverseFromFactor(sharedFactor);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1)
      covariance[i * size + j] = at(covariance, i * size + j) * at(scales, i) * at(scales, j);
  }
  return covariance;
}

interface GroupTask {
  readonly group: SolvedGroup;
  /** Covariance of the shared columns. */
  readonly shared: Float64Array;
  readonly covariances: boolean;
}

/**
 * With P the group's precision once its own deviations are integrated out, c their variance and G the covariance that the shared columns'
 * uncertainty adds to the cells: the cells have covariance c(I − cP) + (I − cP)G(I − cP), their own deviations c(I − cP) + c²PGP.
 */
function groupPosterior(solution: SurfaceSolution, { group, shared, covariances }: GroupTask): GroupPosterior {
  const { cellVariance } = solution;
  const { rows, precision, score } = group;
  const { cells } = rows;
  const mean = score.map((value, i) => cellVariance * value + rowTimes(rows, i, solution.shared));
  const sharedPart = sharedPartOfCells(rows, shared, solution.scales.length);
  let ownVariance = 0;
  for (let i = 0; i < cells; i += 1) ownVariance += cellVariance * (1 - cellVariance * at(precision, i * cells + i));
  let covariance: Float64Array = new Float64Array();
  if (covariances) {
    const timesPrecision = (symmetric: Float64Array) =>
      group.lowRank === null ? rowProducts(symmetric, precision, cells) : timesLowRank(symmetric, group.lowRank);
    const projected = timesPrecision(sharedPart);
    ownVariance += cellVariance ** 2 * sumOfProducts(projected, precision);
    covariance = cellCovariance({ precision, sharedPart, projected, cellVariance, cells, timesPrecision });
  } else if (group.lowRank === null) {
    const square = symmetricRowProducts(precision, precision, { columns: cells });
    ownVariance += cellVariance ** 2 * sumOfProducts(square, sharedPart);
  } else ownVariance += cellVariance ** 2 * squareTrace(group.lowRank, sharedPart);
  const ownSquares = score.reduce((sum, value) => sum + (cellVariance * value) ** 2, ownVariance);
  return { mean, covariance, ownSquares, ownVariance };
}

function sumOfProducts(left: Float64Array, right: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < left.length; k += 1) sum += at(left, k) * at(right, k);
  return sum;
}

/** G. */
function sharedPartOfCells(rows: CellRows, shared: Float64Array, size: number): Float64Array {
  const { cells, starts, columns, weights } = rows;
  const brought = new Float64Array(cells * cells);
  const along = new Float64Array(size);
  for (let i = 0; i < cells; i += 1) {
    along.fill(0);
    let entry = indexAt(starts, i);
    for (const end = indexAt(starts, i + 1); entry < end; entry += 1) {
      const row = indexAt(columns, entry) * size;
      const weight = at(weights, entry);
      for (let k = 0; k < size; k += 1) along[k] = at(along, k) + weight * at(shared, row + k);
    }
    entry = 0;
    for (let j = 0; j <= i; j += 1) {
      let value = 0;
      for (const end = indexAt(starts, j + 1); entry < end; entry += 1)
        value += at(weights, entry) * at(along, indexAt(columns, entry));
      brought[i * cells + j] = value;
    }
  }
  mirrorLower(brought, cells);
  return brought;
}

/** c(I − cP) + (I − cP)G(I − cP). @param given P, G, G·P, and what multiplies a matrix by P. */
function cellCovariance(given: {
  readonly precision: Float64Array;
  readonly sharedPart: Float64Array;
  readonly projected: Float64Array;
  readonly cellVariance: number;
  readonly cells: number;
  readonly timesPrecision: (matrix: Float64Array) => Float64Array;
}): Float64Array {
  const { precision, sharedPart, projected, cellVariance, cells, timesPrecision } = given;
  // (I − cP)G, whose rows are the columns of G(I − cP).
  const kept = transposed(projected, cells);
  for (let k = 0; k < kept.length; k += 1) kept[k] = at(sharedPart, k) - cellVariance * at(kept, k);
  const covariance = timesPrecision(kept);
  for (let k = 0; k < kept.length; k += 1)
    covariance[k] = at(kept, k) - cellVariance * (at(covariance, k) + cellVariance * at(precision, k));
  for (let i = 0; i < cells; i += 1) covariance[i * cells + i] = at(covariance, i * cells + i) + cellVariance;
  return covariance;
}
