import Papa from "papaparse";

const LINES_LOOKED_AT = 12;

/**
 * The rows and cells of a table copied from a spreadsheet or saved as CSV; quoted cells may hold marks and line breaks.
 *
 * The mark between cells is looked for here: with decimal commas a table parted by tabs also reads as one parted by
 * commas.
 */
export function parseTableText(text: string): string[][] {
  return rowsOf(text).filter((row) => row.some((cell) => cell.trim() !== ""));
}

/** The same table with one cell replaced, as text that reads back as it. */
export function withCell(text: string, { row, column, value }: { row: number; column: number; value: string }): string {
  const cells = parseTableText(text);
  const changed = cells.map((texts, index) => {
    if (index !== row) return texts;
    const padded = [...texts, ...Array<string>(Math.max(0, column + 1 - texts.length)).fill("")];
    return padded.with(column, value);
  });
  return Papa.unparse(changed, { delimiter: delimiterOf(text), newline: "\n" });
}

function rowsOf(text: string): string[][] {
  return Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { delimiter: delimiterOf(text), skipEmptyLines: true }).data;
}

/** Tab where there is one, else whichever of semicolon and comma stands most often in a line. */
function delimiterOf(text: string): string {
  const lines = withoutQuoted(text).split(/\r?\n/).slice(0, LINES_LOOKED_AT);
  const most = (mark: string) => Math.max(0, ...lines.map((line) => line.split(mark).length - 1));
  if (most("\t") > 0) return "\t";
  return most(";") > 0 && most(";") >= most(",") ? ";" : ",";
}

function withoutQuoted(text: string): string {
  return text.slice(0, 20_000).replace(/"[^"]*"/g, "");
}
