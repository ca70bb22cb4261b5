import { accountRecord } from "@/features/testing/account-data/account-record-data";
import { documentDownload } from "@/server/document-download";
import { requireViewer } from "@/server/viewer";

/** Everything that is stored about whoever is signed in. */
export async function GET(): Promise<Response> {
  const viewer = await requireViewer();
  return await documentDownload(async () => ({ name: ["your data"], document: await accountRecord(viewer) }));
}
