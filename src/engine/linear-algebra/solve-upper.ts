import { at } from "./at";
import type { Matrix } from "./matrix";

/**
 * Solves Lᵀ·x = b in place, L lower triangular.
 *
 * @param factor square, lower triangular, no zero on its diagonal.
 * @param right `columns` right-hand sides, entry (i, j) at `i * columns + j`; holds the solution afterwards.
 */
export function solveUpper(factor: Matrix, right: Float64Array, columns = 1): void {
  const size = factor.rows;
  for (let row = size - 1; row >= 0; row -= 1) {
    for (let k = row + 1; k < size; k += 1) {
      const weight = at(factor.values, k * size + row);
      if (weight === 0) continue;
      for (let j = 0; j < columns; j += 1)
        right[row * columns + j] = at(right, row * columns + j) - weight * at(right, k * columns + j);
    }
    const pivot = at(factor.values, row * size + row);
    for (let j = 0; j < columns; j += 1) right[row * columns + j] = at(right, row * columns + j) / pivot;
  }
}
