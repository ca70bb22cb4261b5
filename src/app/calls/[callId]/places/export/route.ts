import { callAccess } from "@/features/calls/access";
import { loadApplicantsDocument } from "@/features/places/loaders";
import { placesQuerySchema } from "@/features/places/schema";
import { documentDownload } from "@/server/document-download";
import { requireViewer } from "@/server/viewer";

export async function GET(
  request: Request,
  { params }: RouteContext<"/calls/[callId]/places/export">,
): Promise<Response> {
  const { callId } = await params;
  const query = placesQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  return await documentDownload("applicants.json", async () =>
    loadApplicantsDocument(await callAccess(await requireViewer(), callId, "viewer"), query),
  );
}
