import { at } from "./matrix";

/** Rows of numbers, each times its weight: row k at `k * columns` of `from`, its weight at `start + k * stride` of `weights`. */
export interface WeightedRows {
  readonly from: Float64Array;
  readonly columns: number;
  /** How many numbers of each row, from its start; the others are not touched. */
  readonly width: number;
  readonly first: number;
  readonly end: number;
  readonly weights: Float64Array;
  readonly start: number;
  readonly stride: number;
  /** Factor of every weight. */
  readonly sign: 1 | -1;
}

/**
 * Adds rows `first` to before `end`, each times its weight, to the row of `into` that starts at `target`.
 *
 * Unrolled by four in the same order of additions: each number is loaded and stored a quarter as often, and the
 * sums are identical to the last bit. Rows with weight 0 are skipped.
 */
export function addRows(into: Float64Array, target: number, rows: WeightedRows): void {
  const { from, columns, width, first, end, weights, start, stride, sign } = rows;
  let k = first;
  for (; k + 4 <= end; k += 4) {
    const weight = start + k * stride;
    const a = sign * at(weights, weight);
    const b = sign * at(weights, weight + stride);
    const c = sign * at(weights, weight + 2 * stride);
    const d = sign * at(weights, weight + 3 * stride);
    if (a === 0 && b === 0 && c === 0 && d === 0) continue;
    const row = k * columns;
    for (let j = 0; j < width; j += 1) {
      let value = at(into, target + j) + a * at(from, row + j);
      value += b * at(from, row + columns + j);
      value += c * at(from, row + 2 * columns + j);
      into[target + j] = value + d * at(from, row + 3 * columns + j);
    }
  }
  for (; k < end; k += 1) {
    const a = sign * at(weights, start + k * stride);
    if (a === 0) continue;
    for (let j = 0; j < width; j += 1) into[target + j] = at(into, target + j) + a * at(from, k * columns + j);
  }
}
