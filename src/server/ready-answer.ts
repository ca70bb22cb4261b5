/** The answer to a poll for a calculation: 200 once it is finished, 202 until then. */
export function readyAnswer(isReady: boolean): Response {
  return new Response(null, { status: isReady ? 200 : 202, headers: { "cache-control": "private, no-store" } });
}
