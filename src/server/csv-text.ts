import Papa from "papaparse";

/**
 * Text that a spreadsheet would take for a formula, its full-width signs included. Papa's own rule misses text with a line
 * break in it.
 *
 * @see OWASP, CSV Injection.
 */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

/** Rows as CSV: a head line from the first row's keys, numbers as numbers, and no text that a spreadsheet would execute. */
export function csvText(rows: readonly Readonly<Record<string, string | number>>[]): string {
  return Papa.unparse([...rows], { escapeFormulae: FORMULA });
}
