import { at } from "./at";

/**
 * Takes rows `first` to before `end` of a matrix, each times its weight, from one row of it; four at a time, so that each
 * number of that row is fetched and stored a quarter as often, in the order that one at a time would have.
 *
 * @param into the matrix, of so many `columns`.
 * @param task the first weight stands at `start` of `weights`, each further one `stride` on. Rows that weigh 0 are passed over.
 */
export function subtractRows(
  into: Float64Array,
  task: {
    readonly columns: number;
    readonly row: number;
    readonly first: number;
    readonly end: number;
    readonly weights: Float64Array;
    readonly start: number;
    readonly stride: number;
  },
): void {
  const { columns, row, first, end, weights, start, stride } = task;
  const target = row * columns;
  let k = first;
  let weight = start;
  for (; k + 4 <= end; k += 4, weight += 4 * stride) {
    const a = at(weights, weight);
    const b = at(weights, weight + stride);
    const c = at(weights, weight + 2 * stride);
    const d = at(weights, weight + 3 * stride);
    if (a === 0 && b === 0 && c === 0 && d === 0) continue;
    const from = k * columns;
    for (let j = 0; j < columns; j += 1) {
      let value = at(into, target + j) - a * at(into, from + j);
      value -= b * at(into, from + columns + j);
      value -= c * at(into, from + 2 * columns + j);
      into[target + j] = value - d * at(into, from + 3 * columns + j);
    }
  }
  for (; k < end; k += 1, weight += stride) {
    const a = at(weights, weight);
    if (a === 0) continue;
    for (let j = 0; j < columns; j += 1) into[target + j] = at(into, target + j) - a * at(into, k * columns + j);
  }
}
