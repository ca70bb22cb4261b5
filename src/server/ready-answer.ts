/** The answer to whoever asks whether something has been calculated: 200 once it has, 202 until then. */
export function readyAnswer(isReady: boolean): Response {
  return new Response(null, { status: isReady ? 200 : 202, headers: { "cache-control": "private, no-store" } });
}
