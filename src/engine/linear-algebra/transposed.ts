import { at } from "./matrix";

/** @returns the transposed matrix, entry (i, j) at `i * rows + j`, of one with so many columns. */
export function transposed(values: Float64Array, columns: number): Float64Array {
  const rows = values.length / columns;
  const result = new Float64Array(values.length);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1)
      result[column * rows + row] = at(values, row * columns + column);
  }
  return result;
}
