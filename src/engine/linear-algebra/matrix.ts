/** A dense matrix, row by row: entry (i, j) is `values[i * columns + j]`. */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float64Array;
}

/**
 * Number at an index that the caller knows to be in bounds.
 *
 * For Float64Array only: a single array type keeps the inner loops monomorphic and fast.
 *
 * @returns the number; NaN out of bounds, which every check of a result detects. A throw here would slow down the inner loops.
 */
export function at(values: Float64Array, index: number): number {
  return values[index] ?? Number.NaN;
}

/** Whole number at an index that the caller knows to be in bounds; −1 otherwise. */
export function indexAt(values: Int32Array, index: number): number {
  return values[index] ?? -1;
}
