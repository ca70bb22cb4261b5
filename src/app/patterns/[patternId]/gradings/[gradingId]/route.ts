import { loadGrading } from "@/features/gradings/loaders";

/** How a grading stands. A GET: actions wait for each other, and what is typed meanwhile is saved by one. */
export async function GET(_request: Request, { params }: RouteContext<"/patterns/[patternId]/gradings/[gradingId]">) {
  const { patternId, gradingId } = await params;
  return Response.json(await loadGrading(patternId, gradingId), { headers: { "cache-control": "private, no-store" } });
}
