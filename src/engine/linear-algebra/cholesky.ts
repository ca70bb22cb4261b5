import { at, type Matrix } from "./matrix";

/**
 * Cholesky factor of a symmetric positive definite matrix: the lower triangular L with L·Lᵀ = matrix.
 *
 * @param matrix square; only its lower triangle is read.
 * @returns the factor, zeros above the diagonal; null if the matrix is not positive definite in double precision.
 * @see Golub & Van Loan, Matrix Computations (4th ed.), 4.2.5.
 */
export function cholesky(matrix: Matrix): Matrix | null {
  const size = matrix.rows;
  const values = matrix.values.slice();
  if (!factorise(values, size)) return null;
  for (let row = 0; row < size; row += 1) values.fill(0, row * size + row + 1, (row + 1) * size);
  return { rows: size, columns: size, values };
}

/** As `cholesky`, in place in the lower triangle; the upper triangle is unchanged. @returns false if there is no factor. */
export function factorise(values: Float64Array, size: number): boolean {
  for (let row = 0; row < size; row += 1) {
    const rowStart = row * size;
    for (let column = 0; column < row; column += 1) {
      const columnStart = column * size;
      let rest = at(values, rowStart + column);
      for (let k = 0; k < column; k += 1) rest -= at(values, rowStart + k) * at(values, columnStart + k);
      values[rowStart + column] = rest / at(values, columnStart + column);
    }
    let rest = at(values, rowStart + row);
    for (let k = 0; k < row; k += 1) rest -= at(values, rowStart + k) * at(values, rowStart + k);
    if (!(rest > 0 && Number.isFinite(rest))) return false;
    values[rowStart + row] = Math.sqrt(rest);
  }
  return true;
}

/** @returns log of the determinant of L·Lᵀ, from its Cholesky factor L. */
export function logDeterminant(factor: Matrix): number {
  let sum = 0;
  for (let row = 0; row < factor.rows; row += 1) sum += Math.log(at(factor.values, row * factor.columns + row));
  return 2 * sum;
}
