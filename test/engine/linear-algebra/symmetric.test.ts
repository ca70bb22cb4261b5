import { describe, expect, it } from "vitest";
import {
  cholesky,
  inverseFromFactor,
  rowProducts,
  squareProduct,
  symmetricRowProducts,
  type Matrix,
} from "@/engine/linear-algebra";
import { seededRandom } from "@/engine/seeded-random";

/** Sizes on both sides of what is computed four rows and two columns at a time. */
const SIZES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 13, 18];

describe("products and inverses of which half is worked out", () => {
  it.each(SIZES)("give rows times rows as one number at a time gives them, %i columns", (columns) => {
    for (const [rows, others] of [
      [1, 3],
      [4, 2],
      [5, 5],
      [9, 4],
    ] as const) {
      const left = numbers(rows * columns, columns);
      const right = numbers(others * columns, rows);
      expect(rowProducts(left, right, columns)).toEqual(oneAtATime(left, right, columns));
    }
  });

  it.each(SIZES)("are as the whole product of a symmetric matrix with itself, size %i", (size) => {
    const { values } = definite(size);
    expect(symmetricRowProducts(values, values, { columns: size })).toEqual(oneAtATime(values, values, size));
  });

  it.each(SIZES)("pass over what is zero below the diagonal, size %i", (size) => {
    const upper = numbers(size * size, size).map((value, k) => (k % size < Math.floor(k / size) ? 0 : value));
    expect(symmetricRowProducts(upper, upper, { columns: size, isUpper: true })).toEqual(
      oneAtATime(upper, upper, size),
    );
  });

  it.each(SIZES)("bring a matrix times its inverse to one, size %i", (size) => {
    const matrix = definite(size);
    const factor = cholesky(matrix);
    if (factor === null) throw new Error("it has a factor");
    const product = squareProduct(matrix.values, inverseFromFactor(factor), size);
    product.forEach((value, k) => expect(value).toBeCloseTo(k % (size + 1) === 0 ? 1 : 0, 10));
  });
});

function numbers(length: number, seed: number): Float64Array {
  const random = seededRandom(seed);
  return Float64Array.from({ length }, () => random.normal());
}

function definite(size: number): Matrix {
  const root = numbers(size * size, size);
  const values = oneAtATime(root, root, size).map((value, k) => value + (k % (size + 1) === 0 ? 1 : 0));
  return { rows: size, columns: size, values };
}

function oneAtATime(left: Float64Array, right: Float64Array, columns: number): Float64Array {
  const others = right.length / columns;
  return Float64Array.from({ length: (left.length / columns) * others }, (_, k) => {
    let sum = 0;
    for (let column = 0; column < columns; column += 1)
      sum +=
        (left[Math.floor(k / others) * columns + column] ?? Number.NaN) *
        (right[(k % others) * columns + column] ?? Number.NaN);
    return sum;
  });
}
