import { ServerResponse, type IncomingMessage } from "node:http";
import { plainHeaders, plainPage, type PlainAnswer } from "./plain-page";

declare global {
  /** Requests whose page could not be drawn because the database did not answer, by X-Request-Id. */
  var sizewrightUnavailable: Set<string> | undefined;
}

/** Next bundles its own copy of this file, so shared state is stored in the process. */
function marked(): Set<string> {
  globalThis.sizewrightUnavailable ??= new Set();
  return globalThis.sizewrightUnavailable;
}

/** Notes that a request failed because the database did not answer. */
export function markUnavailable(requestId: string): void {
  marked().add(requestId);
}

const UNAVAILABLE: PlainAnswer = {
  status: 503,
  title: "The database is not responding",
  says: "Everything you saved is safe. The database is usually back within a minute; then try again.",
  retryAfter: 5,
};

const NEXT_HEADERS = ["Content-Encoding", "Content-Length", "Transfer-Encoding", "ETag", "Vary", "Link"];

/**
 * A response that becomes a readable 503 where its page failed because of the database. Next would answer 500 with a page that needs scripts.
 */
export class PageResponse<Request extends IncomingMessage = IncomingMessage> extends ServerResponse<Request> {
  #requestId = "";
  #isReplaced = false;

  /** Makes the response replaceable. Scripts that ask for a part of a page read its failure themselves. */
  watch(requestId: string): void {
    const { headers } = this.req;
    if (headers.rsc !== undefined || headers["next-action"] !== undefined) return;
    this.#requestId = requestId;
    this.once("close", () => marked().delete(requestId));
  }

  override writeHead(...args: unknown[]): this {
    if (this.#isReplaced) return this;
    if (this.statusCode !== 500 || !marked().has(this.#requestId)) return Reflect.apply(super.writeHead, this, args);
    for (const name of NEXT_HEADERS) this.removeHeader(name);
    super.writeHead(UNAVAILABLE.status, plainHeaders(UNAVAILABLE));
    super.end(plainPage(UNAVAILABLE));
    this.#isReplaced = true;
    return this;
  }

  override write(...args: unknown[]): boolean {
    if (!this.headersSent) this.writeHead(this.statusCode);
    return this.#isReplaced ? true : Reflect.apply(super.write, this, args);
  }

  override end(...args: unknown[]): this {
    if (!this.headersSent) this.writeHead(this.statusCode);
    return this.#isReplaced ? this : Reflect.apply(super.end, this, args);
  }
}
