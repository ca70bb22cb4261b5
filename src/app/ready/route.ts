import { readiness } from "@/server/readiness";

export const dynamic = "force-dynamic";

/** Pages can be served: the database answers and is up to date. */
export async function GET(): Promise<Response> {
  const { ready, says } = await readiness();
  return Response.json({ ready, says }, { status: ready ? 200 : 503, headers: { "Cache-Control": "no-store" } });
}
