/** A table for a spreadsheet, as a file. */
export function csvDownload(fileName: string, csv: string): Response {
  return new Response(csv, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="${fileName}"`,
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
