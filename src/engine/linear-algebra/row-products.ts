import { at } from "./matrix";
import { mirrorLower } from "./mirror-lower";

/**
 * Products of every row of one matrix with every row of another: left · rightᵀ, entry (i, j) at `i * rows of right + j`.
 *
 * Both matrices are read along their rows, four rows beside two at a time; each sum is in the order of the columns.
 *
 * @param columns of both matrices.
 */
export function rowProducts(left: Float64Array, right: Float64Array, columns: number): Float64Array {
  const rows = left.length / columns;
  const others = right.length / columns;
  const result = new Float64Array(rows * others);
  for (let row = 0; row < rows; row += 4)
    fillFourRows(result, { left, right, columns, others, row, rows: Math.min(row + 4, rows), end: others, from: 0 });
  return result;
}

/**
 * As `rowProducts` where the result is known to be symmetric: one half is worked out, the other is its mirror image.
 *
 * @param isUpper whether `left` is zero below its diagonal, which is then passed over.
 */
export function symmetricRowProducts(
  left: Float64Array,
  right: Float64Array,
  { columns, isUpper = false }: { readonly columns: number; readonly isUpper?: boolean },
): Float64Array {
  const size = left.length / columns;
  const result = new Float64Array(size * size);
  for (let row = 0; row < size; row += 4) {
    const rows = Math.min(row + 4, size);
    fillFourRows(result, { left, right, columns, others: size, row, rows, end: rows, from: isUpper ? row : 0 });
  }
  mirrorLower(result, size);
  return result;
}

interface FourRows {
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly columns: number;
  readonly others: number;
  /** Rows of `left` from `row` to before `rows`, four at most, with those of `right` to before `end`. */
  readonly row: number;
  readonly rows: number;
  readonly end: number;
  /** The columns before are left out of the sums. */
  readonly from: number;
}

function fillFourRows(result: Float64Array, task: FourRows): void {
  const { row, rows, end } = task;
  const pairs = rows - row === 4 ? end - (end % 2) : 0;
  for (let other = 0; other < pairs; other += 2) fillFourByTwo(result, task, other);
  for (let i = row; i < rows; i += 1) for (let other = pairs; other < end; other += 1) fillOne(result, task, i, other);
}

function fillFourByTwo(
  result: Float64Array,
  { left, right, columns, others, row, from }: FourRows,
  other: number,
): void {
  const first = row * columns;
  const second = first + columns;
  const third = second + columns;
  const fourth = third + columns;
  const one = other * columns;
  const two = one + columns;
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let e = 0;
  let f = 0;
  let g = 0;
  let h = 0;
  for (let k = from; k < columns; k += 1) {
    const x = at(right, one + k);
    const y = at(right, two + k);
    const p = at(left, first + k);
    const q = at(left, second + k);
    const r = at(left, third + k);
    const s = at(left, fourth + k);
    a += p * x;
    b += p * y;
    c += q * x;
    d += q * y;
    e += r * x;
    f += r * y;
    g += s * x;
    h += s * y;
  }
  const start = row * others + other;
  result[start] = a;
  result[start + 1] = b;
  result[start + others] = c;
  result[start + others + 1] = d;
  result[start + 2 * others] = e;
  result[start + 2 * others + 1] = f;
  result[start + 3 * others] = g;
  result[start + 3 * others + 1] = h;
}

function fillOne(
  result: Float64Array,
  { left, right, columns, others, from }: FourRows,
  row: number,
  other: number,
): void {
  let sum = 0;
  for (let k = from; k < columns; k += 1) sum += at(left, row * columns + k) * at(right, other * columns + k);
  result[row * others + other] = sum;
}
