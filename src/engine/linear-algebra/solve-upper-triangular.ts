import { at } from "./at";

/**
 * Solves R·x = b in place, R upper triangular.
 *
 * @param factor square, entry (i, j) at `i * size + j`, no zero on its diagonal.
 * @param right `columns` right-hand sides, entry (i, j) at `i * columns + j`; holds the solution afterwards.
 */
export function solveUpperTriangular(factor: Float64Array, right: Float64Array, columns: number): void {
  const size = right.length / columns;
  for (let row = size - 1; row >= 0; row -= 1) {
    for (let j = 0; j < columns; j += 1) {
      let rest = at(right, row * columns + j);
      for (let k = row + 1; k < size; k += 1) rest -= at(factor, row * size + k) * at(right, k * columns + j);
      right[row * columns + j] = rest / at(factor, row * size + row);
    }
  }
}
