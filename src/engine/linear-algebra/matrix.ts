/** A dense matrix, row by row: entry (i, j) is `values[i * columns + j]`. */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float64Array;
}

/** @returns a matrix of zeros. */
export function zeros(rows: number, columns: number): Matrix {
  return { rows, columns, values: new Float64Array(rows * columns) };
}

/** Entry (row, column). @throws {RangeError} outside the matrix. */
export function entry(matrix: Matrix, row: number, column: number): number {
  const value = matrix.values[row * matrix.columns + column];
  if (value === undefined || column >= matrix.columns) throw new RangeError(`no entry (${row}, ${column})`);
  return value;
}
