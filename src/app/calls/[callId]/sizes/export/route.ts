import { callAccess } from "@/features/calls/access";
import { currentCall } from "@/features/calls/data";
import { loadApplicantsDocument } from "@/features/recruiting/places/loaders";
import { placesQuerySchema } from "@/features/recruiting/places/schema";
import { noteSeen } from "@/features/recruiting/views/seen-data";
import { documentDownload } from "@/server/document-download";
import { requireViewer } from "@/server/viewer";

export async function GET(
  request: Request,
  { params }: RouteContext<"/calls/[callId]/sizes/export">,
): Promise<Response> {
  const { callId } = await params;
  const query = placesQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  return await documentDownload(async () => {
    const access = await callAccess(await requireViewer(), callId, "viewer");
    const [document, { title }] = await Promise.all([loadApplicantsDocument(access, query), currentCall(access)]);
    await noteSeen(access, { kind: "measurements", applications: "all", testers: "all" });
    return { name: [document.pattern.name, title, "applicants"], document };
  });
}
