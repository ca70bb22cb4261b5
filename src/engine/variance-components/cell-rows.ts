import { at, indexAt } from "../linear-algebra";
import type { CellRows } from "./variance-model";

/** A cell's weights on the shared columns; columns that it leaves out have weight 0. */
export type CellRow = readonly { readonly column: number; readonly weight: number }[];

/** The rows of a group's cells in compressed form, for the inner loops. */
export function cellRows(rows: readonly CellRow[]): CellRows {
  const entries = rows.flat();
  const starts = new Int32Array(rows.length + 1);
  rows.forEach((row, cell) => {
    starts[cell + 1] = indexAt(starts, cell) + row.length;
  });
  return {
    cells: rows.length,
    starts,
    columns: Int32Array.from(entries, ({ column }) => column),
    weights: Float64Array.from(entries, ({ weight }) => weight),
  };
}

/** Product of a cell's row and the shared columns. */
export function rowTimes(rows: CellRows, cell: number, shared: Float64Array): number {
  const end = indexAt(rows.starts, cell + 1);
  let sum = 0;
  for (let entry = indexAt(rows.starts, cell); entry < end; entry += 1)
    sum += at(rows.weights, entry) * at(shared, indexAt(rows.columns, entry));
  return sum;
}

/** Adds a cell's row, times a factor, to the shared columns. */
export function addRow(
  into: Float64Array,
  { rows, cell, factor }: { rows: CellRows; cell: number; factor: number },
): void {
  const end = indexAt(rows.starts, cell + 1);
  for (let entry = indexAt(rows.starts, cell); entry < end; entry += 1) {
    const index = indexAt(rows.columns, entry);
    into[index] = at(into, index) + factor * at(rows.weights, entry);
  }
}
