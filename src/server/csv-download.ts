import { attachment } from "./attachment";

/** By which spreadsheets know that the letters are UTF-8. */
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

/** In the place of a table whose numbers are not there yet. */
export function stillReckoned(): Response {
  return new Response("The call is still being reckoned. Ask again in a moment.\n", {
    status: 503,
    headers: { "content-type": "text/plain; charset=utf-8", "retry-after": "5", "cache-control": "private, no-store" },
  });
}
