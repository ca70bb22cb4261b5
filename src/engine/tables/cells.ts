/** A pasted table as rows of texts; rows may have different lengths. */
export type Cells = readonly (readonly string[])[];

/** A message about a pasted table: at a cell, a row, a column, a field beside the table, or the whole table. */
export interface TableFault {
  readonly row: number | null;
  readonly column: number | null;
  readonly field?: string;
  readonly message: string;
  /** Of a question: the unit in which its number would be as the pattern says. */
  readonly looksLike?: "cm" | "in";
}

export const MAX_ROWS = 20_100;
export const MAX_COLUMNS = 400;
/** The 60 measurements and 200 counts that a pattern holds, and what stands between them. */
export const MAX_MEASUREMENT_ROWS = 300;
const MAX_CELLS = 250_000;

const MISSING = new Set(
  (
    ",n/a,na,n.a.,-,–,—,--,none,?,??,not measured,didn't measure,did not measure,skip,skipped,x,/,.,tbd,k.a.,keine," +
    "not sure,don't know,i don't know,no idea,did not weigh,didn't weigh"
  ).split(","),
);

/** @returns the text of a cell in one line, without what cannot be stored; "" where the table has no such cell. */
export function cellAt(cells: Cells, row: number, column: number): string {
  const text = cells[row]?.[column] ?? "";
  return text.replaceAll("\u0000", "").toWellFormed().replace(/\s+/g, " ").trim();
}

/** @returns whether a cell has no answer: empty, "n/a", a dash. */
export function isNoAnswer(text: string): boolean {
  return MISSING.has(text.toLowerCase().replaceAll("’", "'"));
}

/** @returns whether a column, told by its heading, or a row by its name sums up others. */
export function isSummary(text: string): boolean {
  return /^(?:average|avg\.?|mean|median|total|sum|min(?:imum)?|max(?:imum)?|ø|durchschnitt|mittelwert|summe|moyenne)\b:?/i.test(
    text,
  );
}

/** @returns how many columns the widest row has. */
export function columnCount(cells: Cells): number {
  return cells.reduce((max, row) => Math.max(max, row.length), 0);
}

/** @returns the transposed table. */
export function transpose(cells: Cells): Cells {
  return Array.from({ length: columnCount(cells) }, (_, column) => cells.map((row) => row[column] ?? ""));
}

/**
 * What is too much about a table, in a sentence; null where it can be read.
 *
 * @param maxRows that can be read, for the kind of table.
 */
export function tooLarge(cells: Cells, maxRows: number): string | null {
  const columns = columnCount(cells);
  const has = `This table has ${counted(cells.length)} rows and ${counted(columns)} columns`;
  const part = "Paste only the part with your numbers.";
  if (cells.length > maxRows) return `${has}; at most ${counted(maxRows)} rows can be read at once. ${part}`;
  if (columns > MAX_COLUMNS) return `${has}; at most ${MAX_COLUMNS} columns can be read at once. ${part}`;
  if (cells.length * columns > MAX_CELLS)
    return `${has}, ${counted(cells.length * columns)} cells; at most ${counted(MAX_CELLS)} cells can be read at once. ${part}`;
  return null;
}

/** 20100 is `20,100`. */
function counted(number: number): string {
  return String(number).replace(/\B(?=(\d{3})+$)/g, ",");
}

/** @returns faults of the table as a whole, before its cells are read. @param maxRows that can be read, for the kind of table. */
export function shapeFaults(cells: Cells, maxRows: number): TableFault[] {
  const whole = (message: string): TableFault[] => [{ row: null, column: null, message }];
  if (cells.length === 0) return whole("The table is empty. Copy the cells from your spreadsheet and paste them.");
  const large = tooLarge(cells, maxRows);
  if (large !== null) return whole(large);
  if (columnCount(cells) < 2) {
    return whole(
      "This is one column only. Copy the cells from the spreadsheet itself, so that the columns stay apart.",
    );
  }
  return [];
}
