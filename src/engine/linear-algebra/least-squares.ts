import { at } from "./matrix";

export interface LeastSquares {
  readonly coefficients: Float64Array;
  /** Coefficients' covariance for errors of variance 1: (XᵀX)⁻¹, entry (i, j) at `i * columns + j`. */
  readonly unscaledCovariance: Float64Array;
  readonly residualSumOfSquares: number;
}

/**
 * Least squares by Householder reflections, which are more accurate than the normal equations.
 *
 * @param rows design matrix, one row per point. Scale row and value by √weight for a weighted regression.
 * @param values one per row.
 * @returns the fit, null if the columns are linearly dependent.
 * @see Golub & Van Loan, Matrix Computations (4th ed.), 5.2 and 5.3.
 */
export function leastSquares(rows: readonly (readonly number[])[], values: readonly number[]): LeastSquares | null {
  const columns = rows[0]?.length ?? 0;
  const width = columns + 1;
  const work = new Float64Array(rows.length * width);
  rows.forEach((row, i) => {
    row.forEach((value, j) => {
      work[i * width + j] = value;
    });
    work[i * width + columns] = values[i] ?? Number.NaN;
  });
  for (let column = 0; column < columns; column += 1) {
    if (!reflect(work, { rows: rows.length, width, column })) return null;
  }
  return solved(work, { rows: rows.length, columns });
}

/** A column counts as linearly dependent if its remaining norm, relative to its original norm, is below this. */
const DEPENDENCE_TOLERANCE = 1e-12;

function reflect(
  work: Float64Array,
  { rows, width, column }: { rows: number; width: number; column: number },
): boolean {
  const below = columnLength(work, { from: column, rows, width, column });
  if (!(below > DEPENDENCE_TOLERANCE * columnLength(work, { from: 0, rows, width, column }))) return false;
  const pivot = at(work, column * width + column);
  const alpha = pivot > 0 ? -below : below;
  const mirror = new Float64Array(rows);
  for (let i = column; i < rows; i += 1) mirror[i] = at(work, i * width + column);
  mirror[column] = pivot - alpha;
  const half = below * below - alpha * pivot;
  for (let j = column; j < width; j += 1) {
    let along = 0;
    for (let i = column; i < rows; i += 1) along += at(mirror, i) * at(work, i * width + j);
    for (let i = column; i < rows; i += 1)
      work[i * width + j] = at(work, i * width + j) - (along / half) * at(mirror, i);
  }
  return true;
}

function columnLength(
  work: Float64Array,
  given: { from: number; rows: number; width: number; column: number },
): number {
  let sum = 0;
  for (let i = given.from; i < given.rows; i += 1) sum += at(work, i * given.width + given.column) ** 2;
  return Math.sqrt(sum);
}

function solved(work: Float64Array, { rows, columns }: { rows: number; columns: number }): LeastSquares {
  const width = columns + 1;
  const factor = new Float64Array(columns * columns);
  const coefficients = new Float64Array(columns);
  for (let i = 0; i < columns; i += 1) {
    for (let j = i; j < columns; j += 1) factor[i * columns + j] = at(work, i * width + j);
    coefficients[i] = at(work, i * width + columns);
  }
  solveUpperTriangular(factor, coefficients, 1);
  const inverse = new Float64Array(columns * columns);
  for (let i = 0; i < columns; i += 1) inverse[i * columns + i] = 1;
  solveUpperTriangular(factor, inverse, columns);
  const unscaledCovariance = new Float64Array(columns * columns);
  for (let i = 0; i < columns; i += 1) {
    for (let j = 0; j < columns; j += 1) {
      let sum = 0;
      for (let k = 0; k < columns; k += 1) sum += at(inverse, i * columns + k) * at(inverse, j * columns + k);
      unscaledCovariance[i * columns + j] = sum;
    }
  }
  let residualSumOfSquares = 0;
  for (let i = columns; i < rows; i += 1) residualSumOfSquares += at(work, i * width + columns) ** 2;
  return { coefficients, unscaledCovariance, residualSumOfSquares };
}

/**
 * Solves R·x = b in place, R upper triangular.
 *
 * @param factor square, entry (i, j) at `i * size + j`, no zero on its diagonal.
 * @param right `columns` right-hand sides, entry (i, j) at `i * columns + j`; holds the solution afterwards.
 */
function solveUpperTriangular(factor: Float64Array, right: Float64Array, columns: number): void {
  const size = right.length / columns;
  for (let row = size - 1; row >= 0; row -= 1) {
    for (let j = 0; j < columns; j += 1) {
      let rest = at(right, row * columns + j);
      for (let k = row + 1; k < size; k += 1) rest -= at(factor, row * size + k) * at(right, k * columns + j);
      right[row * columns + j] = rest / at(factor, row * size + row);
    }
  }
}
