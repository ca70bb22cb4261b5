/** A dense matrix, row by row: entry (i, j) is `values[i * columns + j]`. */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float64Array;
}
