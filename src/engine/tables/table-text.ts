import type { Cells } from "./cells";

const LINES_LOOKED_AT = 12;
const CHARACTERS_LOOKED_AT = 20_000;
const QUOTED = /(^|[\t;,\n])"(?:[^"]|"")*"(?=[\t;,\r\n]|$)/g;

/**
 * The rows and cells of a table copied from a spreadsheet or saved as CSV; quoted cells may hold marks and line breaks.
 *
 * @returns rows with something in them.
 * @see RFC 4180, of which a quote inside an unquoted cell (`33"`) is forgiven.
 */
export function parseTableText(text: string): string[][] {
  return tableRows(text).filter(isFilled);
}

/** The same with the number, from 1, that each row has in the text, where empty rows count. */
export function parseNumberedTable(text: string): { readonly cells: Cells; readonly rowNumbers: readonly number[] } {
  const filled = [...tableRows(text).entries()].filter(([, row]) => isFilled(row));
  return { cells: filled.map(([, row]) => row), rowNumbers: filled.map(([index]) => index + 1) };
}

export interface ChangedCell {
  readonly row: number;
  readonly column: number;
  readonly value: string;
}

/** The same table with some cells replaced, as text that reads back as it. */
export function withCells(text: string, cells: readonly ChangedCell[]): string {
  const mark = delimiterOf(text);
  const changed = parseTableText(text);
  for (const { row, column, value } of cells) {
    const texts = changed[row] ?? [];
    const padded = [...texts, ...Array<string>(Math.max(0, column + 1 - texts.length)).fill("")];
    changed[row] = padded.with(column, value);
  }
  const quoted = (cell: string) =>
    cell.includes(mark) || /^"|[\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
  return changed.map((cells) => cells.map(quoted).join(mark)).join("\n");
}

function isFilled(row: readonly string[]): boolean {
  return row.some((cell) => cell.trim() !== "");
}

function tableRows(text: string): string[][] {
  const source = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const mark = delimiterOf(text);
  const nextLine = finder(source, "\n");
  const nextMark = finder(source, mark);
  const rows: string[][] = [];
  let row: string[] = [];
  for (let at = 0; at <= source.length;) {
    const quoted = source[at] === '"' ? quotedFrom(source, at) : null;
    const after = quoted === null ? undefined : source[quoted.end];
    const isWhole = quoted !== null && (after === undefined || after === mark || after === "\n");
    const end = isWhole ? quoted.end : Math.min(nextLine(at), nextMark(at));
    row.push(isWhole ? quoted.cell : source.slice(at, end));
    if (source[end] !== mark) {
      rows.push(row);
      row = [];
    }
    at = end + 1;
  }
  return rows;
}

/** Where a mark stands next, the end where it does not. Asked with rising positions, it looks at each character once. */
function finder(source: string, mark: string): (from: number) => number {
  let found = -1;
  return (from) => {
    if (found < from) {
      const index = source.indexOf(mark, from);
      found = index < 0 ? source.length : index;
    }
    return found;
  };
}

function quotedFrom(source: string, at: number): { readonly cell: string; readonly end: number } | null {
  let close = source.indexOf('"', at + 1);
  while (close >= 0 && source[close + 1] === '"') close = source.indexOf('"', close + 2);
  if (close < 0) return null;
  return { cell: source.slice(at + 1, close).replaceAll('""', '"'), end: close + 1 };
}

/**
 * Tab where there is one, else whichever of semicolon and comma stands most often in a line. It is looked for here: with
 * decimal commas a table parted by tabs also reads as one parted by commas.
 */
function delimiterOf(text: string): "\t" | ";" | "," {
  const looked = text.slice(0, CHARACTERS_LOOKED_AT).replace(/\r\n?/g, "\n").replace(QUOTED, "$1");
  const lines = looked.split("\n").slice(0, LINES_LOOKED_AT);
  const counts = (mark: string) =>
    lines.filter((line) => line.trim() !== "").map((line) => line.split(mark).length - 1);
  const most = (mark: string) => Math.max(0, ...counts(mark));
  if (most("\t") > 0) return "\t";
  const semicolons = counts(";");
  const isSteady = semicolons.length > 1 && semicolons.every((count) => count > 0 && count === semicolons[0]);
  return most(";") > 0 && (isSteady || most(";") >= most(",")) ? ";" : ",";
}
