import { loadGrading } from "@/features/patterns/grading/loaders";

/** The state of a grading. A GET, because actions run one after another and one of them saves what is typed meanwhile. */
export async function GET(_request: Request, { params }: RouteContext<"/patterns/[patternId]/gradings/[gradingId]">) {
  const { patternId, gradingId } = await params;
  return Response.json(await loadGrading(patternId, gradingId), { headers: { "cache-control": "private, no-store" } });
}
