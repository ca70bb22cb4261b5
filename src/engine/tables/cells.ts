/** A pasted table as its rows of texts; rows may be of unequal length. */
export type Cells = readonly (readonly string[])[];

/** Something to say about a pasted table: at a cell, at a row or a column, at a field beside the table, or at the whole. */
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

/** @returns whether a cell's text says that there is nothing to tell: empty, "n/a", a dash. */
export function isNoAnswer(text: string): boolean {
  return MISSING.has(text.toLowerCase());
}

/** @returns how many columns the widest row has. */
export function columnCount(cells: Cells): number {
  return cells.reduce((max, row) => Math.max(max, row.length), 0);
}

/** @returns the table with its rows and columns exchanged. */
export function transpose(cells: Cells): Cells {
  return Array.from({ length: columnCount(cells) }, (_, column) => cells.map((row) => row[column] ?? ""));
}

/** @returns what is wrong with a table as a whole, before anything in it is read. */
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
