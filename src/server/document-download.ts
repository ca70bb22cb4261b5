import "server-only";
import { attachment } from "./attachment";
import { AppError } from "./errors";

interface SavedDocument {
  /** What it is of, from the whole to the part: pattern, test, kind of document. */
  readonly name: readonly string[];
  readonly document: unknown;
}

/** A document as a file to save; missing and forbidden ones get the same answer. */
export async function documentDownload(load: () => Promise<SavedDocument>): Promise<Response> {
  try {
    const { name, document } = await load();
    return new Response(`${JSON.stringify(document, null, 2)}\n`, {
      headers: {
        "content-type": "application/json; charset=utf-8",
        "content-disposition": attachment(name, "json"),
        "cache-control": "private, no-store",
      },
    });
  } catch (error) {
    if (!(error instanceof AppError)) throw error;
    const status = error.code === "database-away" ? 503 : 404;
    return new Response(`${error.message}\n`, { status, headers: { "content-type": "text/plain; charset=utf-8" } });
  }
}
