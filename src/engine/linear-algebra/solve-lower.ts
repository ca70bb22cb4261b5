import { at } from "./at";
import type { Matrix } from "./matrix";

/**
 * Solves L·x = b in place, L lower triangular.
 *
 * @param factor square, lower triangular, no zero on its diagonal.
 * @param right `columns` right-hand sides, entry (i, j) at `i * columns + j`; holds the solution afterwards.
 */
export function solveLower(factor: Matrix, right: Float64Array, columns = 1): void {
  const size = factor.rows;
  for (let row = 0; row < size; row += 1) {
    for (let k = 0; k < row; k += 1) {
      const weight = at(factor.values, row * size + k);
      if (weight === 0) continue;
      for (let j = 0; j < columns; j += 1)
        right[row * columns + j] = at(right, row * columns + j) - weight * at(right, k * columns + j);
    }
    const pivot = at(factor.values, row * size + row);
    for (let j = 0; j < columns; j += 1) right[row * columns + j] = at(right, row * columns + j) / pivot;
  }
}
