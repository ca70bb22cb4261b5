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

/**
 * As `cholesky`, in place in the lower triangle; the upper triangle is unchanged.
 *
 * Four columns of a row at a time, whose sums do not wait for each other; each sum is in the order of one at a time.
 *
 * @returns false if there is no factor.
 */
export function factorise(values: Float64Array, size: number): boolean {
  for (let row = 0; row < size; row += 1) {
    const rowStart = row * size;
    let column = 0;
    for (; column + 4 <= row; column += 4) subtractFour(values, { rowStart, column, size });
    for (; column < row; column += 1) divide(values, { rowStart, column, size, from: 0 });
    let rest = at(values, rowStart + row);
    for (let k = 0; k < row; k += 1) rest -= at(values, rowStart + k) * at(values, rowStart + k);
    if (!(rest > 0 && Number.isFinite(rest))) return false;
    values[rowStart + row] = Math.sqrt(rest);
  }
  return true;
}

interface Place {
  readonly rowStart: number;
  readonly column: number;
  readonly size: number;
}

function subtractFour(values: Float64Array, { rowStart, column, size }: Place): void {
  const first = column * size;
  const second = first + size;
  const third = second + size;
  const fourth = third + size;
  let a = at(values, rowStart + column);
  let b = at(values, rowStart + column + 1);
  let c = at(values, rowStart + column + 2);
  let d = at(values, rowStart + column + 3);
  for (let k = 0; k < column; k += 1) {
    const value = at(values, rowStart + k);
    a -= value * at(values, first + k);
    b -= value * at(values, second + k);
    c -= value * at(values, third + k);
    d -= value * at(values, fourth + k);
  }
  values[rowStart + column] = a;
  values[rowStart + column + 1] = b;
  values[rowStart + column + 2] = c;
  values[rowStart + column + 3] = d;
  for (let next = column; next < column + 4; next += 1) divide(values, { rowStart, column: next, size, from: column });
}

/** What is left of an entry once columns `from` to before its own are subtracted, over the pivot. */
function divide(values: Float64Array, { rowStart, column, size, from }: Place & { readonly from: number }): void {
  const columnStart = column * size;
  let rest = at(values, rowStart + column);
  for (let k = from; k < column; k += 1) rest -= at(values, rowStart + k) * at(values, columnStart + k);
  values[rowStart + column] = rest / at(values, columnStart + column);
}

/** @returns log of the determinant of L·Lᵀ, from its Cholesky factor L. */
export function logDeterminant(factor: Matrix): number {
  let sum = 0;
  for (let row = 0; row < factor.rows; row += 1) sum += Math.log(at(factor.values, row * factor.columns + row));
  return 2 * sum;
}
