/** The process is up. */
export function GET(): Response {
  return Response.json({ live: true });
}
