import { at, indexAt, solveLower, squareProduct } from "../linear-algebra";
import { rowTimes } from "./cell-rows";
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

function covarianceOfShared({ sharedFactor, scales }: SurfaceSolution): Float64Array {
  const size = scales.length;
  const roots = new Float64Array(size * size);
  for (let column = 0; column < size; column += 1) roots[column * size + column] = at(scales, column);
  solveLower(sharedFactor, roots, size);
  const covariance = new Float64Array(size * size);
  for (let k = 0; k < size; k += 1) {
    for (let i = 0; i <= k; i += 1) {
      const left = at(roots, k * size + i);
      if (left === 0) continue;
      for (let j = 0; j <= i; j += 1)
        covariance[i * size + j] = at(covariance, i * size + j) + left * at(roots, k * size + j);
    }
  }
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < i; j += 1) covariance[j * size + i] = at(covariance, i * size + j);
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
 * uncertainty adds to the cells: the cells have covariance c(I − cP) + (I − cP)G(I − cP), their own deviations by c(I − cP) + c²PGP.
 */
function groupPosterior(solution: SurfaceSolution, { group, shared, covariances }: GroupTask): GroupPosterior {
  const { cellVariance } = solution;
  const { rows, precision, score } = group;
  const { cells } = rows;
  const mean = score.map((value, i) => cellVariance * value + rowTimes(rows, i, solution.shared));
  const sharedPart = sharedPartOfCells(rows, shared, solution.scales.length);
  const projectedShared = squareProduct(precision, sharedPart, cells);
  const ownVariance = ownDeviationVariance({ precision, projectedShared, cellVariance, cells });
  const ownSquares = score.reduce((sum, value) => sum + (cellVariance * value) ** 2, ownVariance);
  const covariance = covariances
    ? cellCovariance({ precision, sharedPart, projectedShared, cellVariance, cells })
    : new Float64Array();
  return { mean, covariance, ownSquares, ownVariance };
}

function sharedPartOfCells(rows: CellRows, shared: Float64Array, size: number): Float64Array {
  const { cells, starts, columns, weights } = rows;
  const brought = new Float64Array(cells * cells);
  const along = new Float64Array(size);
  for (let i = 0; i < cells; i += 1) {
    along.fill(0);
    for (let entry = indexAt(starts, i); entry < indexAt(starts, i + 1); entry += 1) {
      const offset = indexAt(columns, entry) * size;
      const weight = at(weights, entry);
      for (let k = 0; k < size; k += 1) along[k] = at(along, k) + weight * at(shared, offset + k);
    }
    for (let j = 0; j <= i; j += 1) {
      const value = rowTimes(rows, j, along);
      brought[i * cells + j] = value;
      brought[j * cells + i] = value;
    }
  }
  return brought;
}

interface CellTask {
  readonly precision: Float64Array;
  /** G, and P·G. */
  readonly sharedPart: Float64Array;
  readonly projectedShared: Float64Array;
  readonly cellVariance: number;
  readonly cells: number;
}

function ownDeviationVariance({
  precision,
  projectedShared,
  cellVariance,
  cells,
}: Omit<CellTask, "sharedPart">): number {
  let variance = 0;
  for (let i = 0; i < cells; i += 1) variance += cellVariance * (1 - cellVariance * at(precision, i * cells + i));
  for (let k = 0; k < projectedShared.length; k += 1)
    variance += cellVariance ** 2 * at(projectedShared, k) * at(precision, k);
  return variance;
}

function cellCovariance({ precision, sharedPart, projectedShared, cellVariance, cells }: CellTask): Float64Array {
  const kept = new Float64Array(sharedPart.length);
  for (let k = 0; k < kept.length; k += 1) kept[k] = at(sharedPart, k) - cellVariance * at(projectedShared, k);
  const lost = squareProduct(kept, precision, cells);
  const covariance = new Float64Array(cells * cells);
  for (let i = 0; i < cells; i += 1) {
    for (let j = 0; j < cells; j += 1) {
      const k = i * cells + j;
      const own = cellVariance * ((i === j ? 1 : 0) - cellVariance * at(precision, k));
      covariance[k] = own + at(kept, k) - cellVariance * at(lost, k);
    }
  }
  return covariance;
}
