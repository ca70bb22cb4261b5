import { at, type Matrix } from "./matrix";
import { symmetricRowProducts } from "./row-products";

/**
 * Inverse of a symmetric positive definite matrix from its Cholesky factor L: L⁻ᵀL⁻¹, of which one half is worked out.
 *
 * @param factor square, lower triangular, no zero on its diagonal.
 * @returns the whole symmetric inverse, entry (i, j) at `i * size + j`.
 * @see Golub & Van Loan, Matrix Computations (4th ed.), 3.1 for the triangular solves.
 */
export function inverseFromFactor(factor: Matrix): Float64Array {
  const root = transposedInverse(factor);
  return symmetricRowProducts(root, root, { columns: factor.rows, isUpper: true });
}

/** L⁻ᵀ, zero below its diagonal: row j solves L·x = eⱼ. Four rows at a time, whose sums do not wait for each other. */
function transposedInverse({ rows: size, values }: Matrix): Float64Array {
  const padded = Math.ceil(size / 4) * 4;
  const inverse = new Float64Array(padded * size);
  for (let row = 0; row < size; row += 4) {
    const first = row * size;
    const second = first + size;
    const third = second + size;
    const fourth = third + size;
    for (let k = row; k < size; k += 1) {
      let a = k === row ? 1 : 0;
      let b = k === row + 1 ? 1 : 0;
      let c = k === row + 2 ? 1 : 0;
      let d = k === row + 3 ? 1 : 0;
      for (let m = row; m < k; m += 1) {
        const value = at(values, k * size + m);
        a -= value * at(inverse, first + m);
        b -= value * at(inverse, second + m);
        c -= value * at(inverse, third + m);
        d -= value * at(inverse, fourth + m);
      }
      const pivot = at(values, k * size + k);
      inverse[first + k] = a / pivot;
      inverse[second + k] = b / pivot;
      inverse[third + k] = c / pivot;
      inverse[fourth + k] = d / pivot;
    }
  }
  return inverse.subarray(0, size * size);
}
