import { at } from "./at";
import type { Matrix } from "./matrix";

/**
 * Cholesky factor of a symmetric positive definite matrix: the lower triangular L with L·Lᵀ = matrix.
 *
 * @param matrix square; only its lower triangle is read.
 * @returns the factor, zeros above the diagonal; null where the matrix is not positive definite in doubles.
 * @see Golub & Van Loan, Matrix Computations (4th ed.), 4.2.5.
 */
export function cholesky(matrix: Matrix): Matrix | null {
  const size = matrix.rows;
  const factor = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let rest = at(matrix.values, row * size + column);
      for (let k = 0; k < column; k += 1) rest -= at(factor, row * size + k) * at(factor, column * size + k);
      if (row !== column) factor[row * size + column] = rest / at(factor, column * size + column);
      else if (rest > 0 && Number.isFinite(rest)) factor[row * size + row] = Math.sqrt(rest);
      else return null;
    }
  }
  return { rows: size, columns: size, values: factor };
}
