import { at } from "./matrix";

/** Makes a square matrix symmetric: what is below its diagonal is copied above it. */
export function mirrorLower(values: Float64Array, size: number): void {
  for (let row = 1; row < size; row += 1) {
    for (let column = 0; column < row; column += 1) values[column * size + row] = at(values, row * size + column);
  }
}
