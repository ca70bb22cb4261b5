import { addRows } from "./add-rows";

/** @returns left · right, both square of that size, entry (i, j) at `i * size + j`. */
export function squareProduct(left: Float64Array, right: Float64Array, size: number): Float64Array {
  const result = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    addRows(result, row * size, {
      from: right,
      columns: size,
      width: size,
      first: 0,
      end: size,
      weights: left,
      start: row * size,
      stride: 1,
      sign: 1,
    });
  }
  return result;
}
