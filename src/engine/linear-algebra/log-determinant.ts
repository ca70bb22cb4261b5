import { at } from "./at";
import type { Matrix } from "./matrix";

/** @returns log of the determinant of L·Lᵀ, from its Cholesky factor L. */
export function logDeterminant(factor: Matrix): number {
  let sum = 0;
  for (let row = 0; row < factor.rows; row += 1) sum += Math.log(at(factor.values, row * factor.columns + row));
  return 2 * sum;
}
