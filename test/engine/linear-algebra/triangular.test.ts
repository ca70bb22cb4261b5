import { describe, expect, it } from "vitest";
import { cholesky, factorise, solveLower, solveUpper, squareProduct } from "@/engine/linear-algebra";
import { seededRandom } from "@/engine/seeded-random";

/** Sizes on both sides of what is computed four rows at a time. */
const SIZES = [1, 2, 3, 4, 5, 7, 8, 9, 13];
const COLUMNS = [1, 2, 6];

describe("triangular solves and products, four rows at a time", () => {
  it.each(SIZES)("give the bits that one row at a time gives, size %i", (size) => {
    const factor = { rows: size, columns: size, values: lowerTriangle(size) };
    for (const columns of COLUMNS) {
      const right = numbers(size * columns, size + columns);
      const down = right.slice();
      solveLower(factor, down, columns);
      expect(down).toEqual(solvedRowByRow(factor.values, right, { size, columns, isUpper: false }));
      const up = right.slice();
      solveUpper(factor, up, columns);
      expect(up).toEqual(solvedRowByRow(factor.values, right, { size, columns, isUpper: true }));
    }
  });

  it.each(SIZES)("bring a matrix back from its factor, size %i", (size) => {
    const lower = lowerTriangle(size);
    const matrix = squareProduct(lower, transposed(lower, size), size);
    const factor = cholesky({ rows: size, columns: size, values: matrix });
    factor?.values.forEach((value, index) => {
      expect(value).toBeCloseTo(lower[index] ?? Number.NaN, 9);
    });
    expect(factor?.values.length).toBe(size * size);
  });

  it("find no factor of a matrix that is not positive definite", () => {
    expect(factorise(Float64Array.of(1, 2, 2, 1), 2)).toBe(false);
    expect(factorise(Float64Array.of(Number.NaN), 1)).toBe(false);
  });
});

function numbers(length: number, seed: number): Float64Array {
  const random = seededRandom(seed);
  return Float64Array.from({ length }, () => random.normal());
}

/** With some zeros below its diagonal, which solves pass over. */
function lowerTriangle(size: number): Float64Array {
  return numbers(size * size, size).map((value, index) => {
    const row = Math.floor(index / size);
    const column = index % size;
    if (column > row) return 0;
    if (column === row) return 1 + Math.abs(value);
    return (row + column) % 5 === 0 || column < 4 - (row % 3) ? 0 : value;
  });
}

function transposed(values: Float64Array, size: number): Float64Array {
  return values.map((_, index) => values[(index % size) * size + Math.floor(index / size)] ?? Number.NaN);
}

function solvedRowByRow(
  lower: Float64Array,
  right: Float64Array,
  { size, columns, isUpper }: { size: number; columns: number; isUpper: boolean },
): Float64Array {
  const solved = right.slice();
  const order = Array.from({ length: size }, (_, index) => (isUpper ? size - 1 - index : index));
  for (const row of order) {
    for (let j = 0; j < columns; j += 1) {
      let rest = solved[row * columns + j] ?? Number.NaN;
      for (let k = isUpper ? row + 1 : 0; k < (isUpper ? size : row); k += 1) {
        const weight = (isUpper ? lower[k * size + row] : lower[row * size + k]) ?? Number.NaN;
        rest -= weight * (solved[k * columns + j] ?? Number.NaN);
      }
      solved[row * columns + j] = rest / (lower[row * size + row] ?? Number.NaN);
    }
  }
  return solved;
}
