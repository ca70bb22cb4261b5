import { callAccess } from "@/features/calls/access";
import { callDocument, currentCall } from "@/features/calls/data";
import { noteSeen } from "@/features/recruiting/views/seen-data";
import { documentDownload } from "@/server/document-download";
import { requireViewer } from "@/server/viewer";

export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ readonly callId: string }> },
): Promise<Response> {
  const { callId } = await params;
  return await documentDownload(async () => {
    const access = await callAccess(await requireViewer(), callId, "viewer");
    const [document, { title }] = await Promise.all([callDocument(access), currentCall(access)]);
    await noteSeen(access, { kind: "measurements", testers: "all" });
    return { name: [document.pattern.name, title, "test"], document };
  });
}
