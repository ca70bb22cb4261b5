import { at, type Matrix } from "./matrix";
import { addRows } from "./add-rows";

/**
 * Solves L·x = b in place, L lower triangular.
 *
 * @param factor square, lower triangular, no zero on its diagonal.
 * @param right `columns` right-hand sides, entry (i, j) at `i * columns + j`; holds the solution afterwards.
 */
export function solveLower(factor: Matrix, right: Float64Array, columns = 1): void {
  const size = factor.rows;
  for (let row = 0; row < size; row += 1) {
    addRows(right, row * columns, {
      from: right,
      columns,
      width: columns,
      first: 0,
      end: row,
      weights: factor.values,
      start: row * size,
      stride: 1,
      sign: -1,
    });
    const pivot = at(factor.values, row * size + row);
    for (let j = row * columns; j < (row + 1) * columns; j += 1) right[j] = at(right, j) / pivot;
  }
}

/**
 * Solves Lᵀ·x = b in place, L lower triangular.
 *
 * @param factor square, lower triangular, no zero on its diagonal.
 * @param right `columns` right-hand sides, entry (i, j) at `i * columns + j`; holds the solution afterwards.
 */
export function solveUpper(factor: Matrix, right: Float64Array, columns = 1): void {
  const size = factor.rows;
  for (let row = size - 1; row >= 0; row -= 1) {
    addRows(right, row * columns, {
      from: right,
      columns,
      width: columns,
      first: row + 1,
      end: size,
      weights: factor.values,
      start: row,
      stride: size,
      sign: -1,
    });
    const pivot = at(factor.values, row * size + row);
    for (let j = row * columns; j < (row + 1) * columns; j += 1) right[j] = at(right, j) / pivot;
  }
}
