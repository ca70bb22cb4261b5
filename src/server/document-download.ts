import "server-only";
import { AppError } from "./errors";

/** A document as a file to save; the absent and the forbidden answer alike. */
export async function documentDownload(name: string, load: () => Promise<unknown>): Promise<Response> {
  try {
    const text = `${JSON.stringify(await load(), null, 2)}\n`;
    return new Response(text, {
      headers: {
        "content-type": "application/json; charset=utf-8",
        "content-disposition": `attachment; filename="${name}"`,
        "cache-control": "private, no-store",
      },
    });
  } catch (error) {
    if (!(error instanceof AppError)) throw error;
    const status = error.code === "database-away" ? 503 : 404;
    return new Response(`${error.message}\n`, { status, headers: { "content-type": "text/plain; charset=utf-8" } });
  }
}
