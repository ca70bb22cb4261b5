import type { IncomingMessage, ServerResponse } from "node:http";
import { answerPlainly, type PlainAnswer } from "./plain-page";
import { RequestGate } from "./request-gate";

/** Below the connections that the database's pool holds, so that no page waits for one for long. */
const AT_ONCE = 8;

const pages = new RequestGate({ atOnce: AT_ONCE, waiting: 500, waitMs: 20_000, stayMs: 10_000 });

const BUSY: PlainAnswer = {
  status: 503,
  title: "Sizewright is very busy",
  says: "Everything you saved is safe. Try again in half a minute.",
  retryAfter: 30,
};

/** What is read from the disk, and what others watch this server by. */
const WITHOUT_WAITING = /^\/(_next\/|live$|ready$|favicon\.ico$|icon\.svg$|robots\.txt$)/;

/** Answers a request when it is its turn. Only reading waits in the queue: what is sent may be slow to come. */
export async function inTurn(
  request: IncomingMessage,
  response: ServerResponse,
  answer: () => Promise<void>,
): Promise<void> {
  const isPage = request.method === "GET" && !WITHOUT_WAITING.test(request.url ?? "/");
  if (!isPage) return await answer();
  const leave = await pages.enter();
  if (leave === null) return answerPlainly(response, BUSY);
  response.once("close", leave);
  // The client left while waiting.
  if (response.destroyed || response.closed) return leave();
  await answer();
}
