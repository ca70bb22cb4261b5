import { cellAt, columnCount, isSummary, transpose, type Cells } from "./cells";
import { looksNumeric } from "./read-cell";
import { isSizeName } from "./size-names";

export interface Layout {
  readonly turned: boolean;
  readonly headerRow: number;
  readonly letterColumn: number | null;
  readonly labelColumn: number | null;
  readonly sizeColumns: readonly number[];
}

const ROWS_SEARCHED = 30;
const NO_SIZE =
  /\bunits?\b|\btol\b|toleran|±|notes?|comment|\bhow\b|letter|measure|\bgrading\b|\bgrade rule\b|\bref\b|\bease\b|\bremarks?\b|\bpart\b|\btype\b|^#$|^no\.?$/i;
const SIZE_HEADING = /\bsizes?\b|\bmeasure|\bletter\b|gr(?:ö|oe)(?:ß|ss)e|\btaille\b|\btallas?\b|\bmaat\b|\bstorlek\b/i;
const LETTER = /^(?!(?:cm|mm|in)\b)\(?[A-Za-z]{1,2}\d{0,2}[.):]?$/;

/** Finds the rows and columns of a table's sizes, letters and names. @param cells at least one row. @returns columns and rows of the turned table where it is turned. */
export function guessLayout(cells: Cells): Layout {
  const turned = sizeNames(transpose(cells)).max > sizeNames(cells).max;
  return layoutAt(cells, { turned, headerRow: guessHeaderRow(turned ? transpose(cells) : cells) });
}

/** The same if the direction and the row of the sizes are known. */
export function layoutAt(cells: Cells, { turned, headerRow }: Pick<Layout, "turned" | "headerRow">): Layout {
  const view = turned ? transpose(cells) : cells;
  const columns = Array.from({ length: columnCount(view) }, (_, column) => column);
  const sizeColumns = columns.filter((column) => isSizeColumn(view, headerRow, column));
  const others = columns.filter((column) => !sizeColumns.includes(column) && texts(view, headerRow, column).length > 0);
  const letterColumn = others.find((column) => isLetterColumn(view, headerRow, column)) ?? null;
  const labelColumn = columnWithMostWords(
    view,
    headerRow,
    others.filter((column) => column !== letterColumn),
  );
  return { turned, headerRow, letterColumn, labelColumn, sizeColumns };
}

/** The row that holds the sizes. @param view the table, turned where its sizes run down. */
export function guessHeaderRow(view: Cells): number {
  const { row, max } = sizeNames(view);
  if (max >= 1) return row;
  const first = view.findIndex((cells) => cells.filter((text) => text.trim() !== "").length >= 2);
  return Math.max(first, 0);
}

/** The first row with the most names of sizes. Bare numbers are names only in the first row or beside the word "size". */
function sizeNames(view: Cells): { readonly row: number; readonly max: number } {
  const first = view.findIndex((cells) => cells.filter((text) => text.trim() !== "").length >= 3);
  let row = 0;
  let max = 0;
  view.slice(0, ROWS_SEARCHED).forEach((cells, index) => {
    const headed = hasSizeHeading(cells);
    const names = cells
      .map((text) => text.trim())
      .filter((text) => isSizeName(text) || (headed && isSingleLetter(text)));
    const inWords = names.filter((name) => /\p{L}/u.test(name)).length;
    const bare = index === first || headed ? names.length - inWords : 0;
    const score = Math.max(2 * inWords, bare) * (headed ? 1.5 : 1);
    const spread = new Set(names).size === names.length ? score : score / 4;
    if (spread > max) [row, max] = [index, spread];
  });
  return { row, max };
}

function hasSizeHeading(cells: readonly string[]): boolean {
  return SIZE_HEADING.test(cells.slice(0, 3).join(" "));
}

function isSingleLetter(text: string): boolean {
  return /^[A-H]$/.test(text);
}

function isSizeColumn(view: Cells, headerRow: number, column: number): boolean {
  const heading = cellAt(view, headerRow, column);
  if (heading === "" || NO_SIZE.test(heading) || isSummary(heading)) return false;
  const below = texts(view, headerRow, column);
  if (below.length === 0) return isSizeName(heading);
  return below.filter(looksNumeric).length >= below.length / 2;
}

function isLetterColumn(view: Cells, headerRow: number, column: number): boolean {
  const below = texts(view, headerRow, column);
  return below.filter((text) => LETTER.test(text)).length > below.length * 0.6;
}

function columnWithMostWords(view: Cells, headerRow: number, columns: readonly number[]): number | null {
  const words = (column: number) =>
    new Set(texts(view, headerRow, column).filter((text) => /\p{L}{2}/u.test(text))).size;
  const [best] = columns.toSorted((left, right) => words(right) - words(left));
  return best !== undefined && words(best) > 0 ? best : null;
}

function texts(view: Cells, headerRow: number, column: number): string[] {
  return view.flatMap((_, row) => {
    const text = row > headerRow ? cellAt(view, row, column) : "";
    return text === "" ? [] : [text];
  });
}
