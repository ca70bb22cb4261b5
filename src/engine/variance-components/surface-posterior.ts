import { at, solveLower, solveUpper, zeros, type Matrix } from "../linear-algebra";
import { rowTimes, type SolvedGroup, type SurfaceSolution } from "./solve-surface";

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
  readonly groups: readonly GroupPosterior[];
}

/**
 * What the readings leave uncertain of the shared columns and of the cells.
 *
 * @param covariances whether the cells' covariances are wanted; they are empty otherwise.
 * @returns means and variances; those of fixed columns include that they are estimated.
 */
export function surfacePosterior(solution: SurfaceSolution, { covariances } = { covariances: true }): SurfacePosterior {
  return {
    sharedVariances: sharedVariances(solution),
    groups: solution.groups.map((group) => groupPosterior(solution, group, covariances)),
  };
}

function sharedVariances({ sharedFactor, scales }: SurfaceSolution): Float64Array {
  const size = scales.length;
  const roots = new Float64Array(size * size);
  for (let column = 0; column < size; column += 1) roots[column * size + column] = at(scales, column);
  solveLower(sharedFactor, roots, size);
  return scales.map((_, column) => {
    let sum = 0;
    for (let row = 0; row < size; row += 1) sum += at(roots, row * size + column) ** 2;
    return sum;
  });
}

function groupPosterior(solution: SurfaceSolution, group: SolvedGroup, covariances: boolean): GroupPosterior {
  const { cellVariance, shared } = solution;
  const cells = group.rows.length;
  const mean = group.score.map((score) => cellVariance * score);
  group.rows.forEach((row, i) => {
    mean[i] = at(mean, i) + rowTimes(row, shared);
  });
  const own = inverseOf(group.factor);
  const { kept, lost } = sharedLoadings(solution, group);
  solveLower(solution.sharedFactor, lost, cells);
  const deviations = ownDeviations({ solution, group, own, lost });
  if (!covariances) return { mean, covariance: new Float64Array(), ...deviations };
  const covariance = own.map((value) => cellVariance * value);
  solveLower(solution.sharedFactor, kept, cells);
  addSquares(covariance, kept, cells);
  return { mean, covariance, ...deviations };
}

function inverseOf(factor: Matrix): Float64Array {
  const { values } = zeros(factor.rows, factor.rows);
  for (let i = 0; i < factor.rows; i += 1) values[i * factor.rows + i] = 1;
  solveLower(factor, values, factor.rows);
  solveUpper(factor, values, factor.rows);
  return values;
}

/** What the shared columns, scaled, bring to the cells (kept) and to their own deviations (lost), a row a column. */
function sharedLoadings({ scales }: SurfaceSolution, { rows, factor }: SolvedGroup) {
  const size = scales.length;
  const cells = rows.length;
  const design = new Float64Array(cells * size);
  rows.forEach((row, i) => {
    for (const { column, weight } of row)
      design[i * size + column] = at(design, i * size + column) + weight * at(scales, column);
  });
  const shrunk = design.slice();
  solveLower(factor, shrunk, size);
  solveUpper(factor, shrunk, size);
  const kept = transposed(shrunk, cells, size);
  const lost = transposed(
    design.map((value, index) => value - at(shrunk, index)),
    cells,
    size,
  );
  return { kept, lost };
}

function transposed(values: Float64Array, rows: number, columns: number): Float64Array {
  const result = new Float64Array(values.length);
  for (let i = 0; i < rows; i += 1)
    for (let j = 0; j < columns; j += 1) result[j * rows + i] = at(values, i * columns + j);
  return result;
}

function addSquares(into: Float64Array, roots: Float64Array, cells: number): void {
  const ranks = cells === 0 ? 0 : roots.length / cells;
  for (let rank = 0; rank < ranks; rank += 1) {
    for (let i = 0; i < cells; i += 1) {
      const left = at(roots, rank * cells + i);
      if (left === 0) continue;
      for (let j = 0; j < cells; j += 1)
        into[i * cells + j] = at(into, i * cells + j) + left * at(roots, rank * cells + j);
    }
  }
}

function ownDeviations(given: {
  solution: SurfaceSolution;
  group: SolvedGroup;
  own: Float64Array;
  lost: Float64Array;
}): { ownSquares: number; ownVariance: number } {
  const { solution, group, own, lost } = given;
  const cells = group.rows.length;
  let squares = 0;
  let variance = 0;
  for (let i = 0; i < cells; i += 1) {
    squares += (solution.cellVariance * at(group.score, i)) ** 2;
    variance += solution.cellVariance * at(own, i * cells + i);
  }
  for (const value of lost) variance += value * value;
  return { ownSquares: squares + variance, ownVariance: variance };
}
