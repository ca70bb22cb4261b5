import type { IncomingMessage, ServerResponse } from "node:http";
import { answerPlainly, type PlainAnswer } from "./plain-page";

/** The whole form as sent. */
const MAX_BYTES = 256_000;

/**
 * Addresses to which scripts send more than a form, and how much. Next decodes a body before any code of the page's sees it, and a body
 * in parts (multipart) as large as a document would take it many seconds.
 */
const LARGER: readonly { readonly path: RegExp; readonly types: RegExp; readonly bytes: number }[] = [
  { path: /^\/patterns\/new\/document$/, types: /^text\/plain/, bytes: 21_000_000 },
  // A route, so no page of Next's decodes it.
  { path: /^\/photos\/send$/, types: /^(image\/|application\/octet-stream|multipart\/form-data)/, bytes: 21_000_000 },
  // 900 000 characters of a table, or a draft with the longest instructions.
  { path: /^\/patterns\/(new\/paste|[^/]+\/(edit|reports\/paste))$/, types: /^text\/plain/, bytes: 5_000_000 },
];

/** Browsers look at an answer only once all is sent, so this much is read and discarded; a larger body is cut off. */
const MAX_DRAINED_BYTES = 50_000_000;

const TOO_LARGE: PlainAnswer = {
  status: 413,
  title: "This is too much to send at once",
  says: "The limit is 256 kB for a form and 20 MB for an imported file or photos. Go back, shorten the longest text or send a part, and try again.",
};

const NO_LENGTH: PlainAnswer = {
  status: 411,
  title: "The size of this request is missing",
  says: "A request with content must have a Content-Length header. Browsers send it; configure other programs to do so.",
};

/** Answers a request whose body is larger than its address accepts, without reading it. @returns whether it did. */
export function refuseLargeBody(request: IncomingMessage, response: ServerResponse): boolean {
  const { "content-length": length, "transfer-encoding": encoding } = request.headers;
  if (encoding !== undefined) return cutOff(request, response, NO_LENGTH);
  const bytes = Number(length ?? 0);
  if (bytes <= maxBytes(request)) return false;
  if (bytes > MAX_DRAINED_BYTES) return cutOff(request, response, TOO_LARGE);
  request.once("end", () => answerPlainly(response, TOO_LARGE));
  request.resume();
  return true;
}

function cutOff(request: IncomingMessage, response: ServerResponse, answer: PlainAnswer): true {
  response.setHeader("Connection", "close");
  answerPlainly(response, answer);
  response.once("finish", () => request.destroy());
  return true;
}

function maxBytes({ url = "/", headers }: IncomingMessage): number {
  const path = url.split("?", 1)[0] ?? "/";
  const type = headers["content-type"] ?? "";
  return LARGER.find((larger) => larger.path.test(path) && larger.types.test(type))?.bytes ?? MAX_BYTES;
}
