/** A pasted table as rows of texts; rows may have different lengths. */
export type Cells = readonly (readonly string[])[];

/** A message about a pasted table: at a cell, a row, a column, a field beside the table, or the whole table. */
export interface TableFault {
  readonly row: number | null;
  readonly column: number | null;
  readonly field?: string;
  readonly message: string;
}

export const MAX_ROWS = 20_100;
export const MAX_COLUMNS = 400;

const MISSING = new Set(["", "n/a", "na", "n.a.", "-", "–", "—", "--", "none", "?", "not measured", "skip", "skipped"]);

/** @returns the text of a cell in one line, without what cannot be stored; "" where the table has no such cell. */
export function cellAt(cells: Cells, row: number, column: number): string {
  const text = cells[row]?.[column] ?? "";
  return text.replaceAll("\u0000", "").toWellFormed().replace(/\s+/g, " ").trim();
}

/** @returns whether a cell has no answer: empty, "n/a", a dash. */
export function isNoAnswer(text: string): boolean {
  return MISSING.has(text.toLowerCase());
}

/** @returns how many columns the widest row has. */
export function columnCount(cells: Cells): number {
  return cells.reduce((max, row) => Math.max(max, row.length), 0);
}

/** @returns the transposed table. */
export function transpose(cells: Cells): Cells {
  return Array.from({ length: columnCount(cells) }, (_, column) => cells.map((row) => row[column] ?? ""));
}

/** @returns faults of the table as a whole, before its cells are read. */
export function shapeFaults(cells: Cells): TableFault[] {
  const whole = (message: string): TableFault[] => [{ row: null, column: null, message }];
  if (cells.length === 0) return whole("The table is empty. Copy the cells from your spreadsheet and paste them.");
  if (cells.length > MAX_ROWS || columnCount(cells) > MAX_COLUMNS) {
    return whole(`The table has more than ${MAX_ROWS} rows or ${MAX_COLUMNS} columns. Paste a part of it.`);
  }
  if (columnCount(cells) < 2) {
    return whole(
      "This is one column only. Copy the cells from the spreadsheet itself, so that the columns stay apart.",
    );
  }
  return [];
}
