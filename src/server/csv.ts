import Papa from "papaparse";
import { attachment } from "./attachment";

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

/** Tells spreadsheets that the text is UTF-8. */
const BYTE_ORDER_MARK = "\uFEFF";

/** A table for a spreadsheet, as a file. @param name what it is of: pattern, test, page. @param csv from `csvText`. */
export function csvDownload(name: readonly string[], csv: string): Response {
  return new Response(`${BYTE_ORDER_MARK}${csv}`, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": attachment(name, "csv"),
      "cache-control": "private, no-store",
    },
  });
}

/** The answer while a table's numbers are not ready. */
export function stillCalculating(): Response {
  return message(503, "The results are still being calculated. Try again in a moment.", { "retry-after": "5" });
}

/** The answer when a table's numbers cannot be calculated. */
export function notCalculated(why: string): Response {
  return message(409, `The results could not be calculated. ${why}`);
}

function message(status: number, text: string, headers: Readonly<Record<string, string>> = {}): Response {
  return new Response(`${text}\n`, {
    status,
    headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "private, no-store", ...headers },
  });
}
