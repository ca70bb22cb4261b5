import { callAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { documentDownload } from "@/server/document-download";
import { requireViewer } from "@/server/viewer";

export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ readonly callId: string }> },
): Promise<Response> {
  const { callId } = await params;
  return await documentDownload("call.json", async () =>
    callDocument(await callAccess(await requireViewer(), callId, "viewer")),
  );
}
