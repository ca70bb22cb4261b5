import { applicationAccess } from "@/features/recruiting/applications/access";
import { applicationRecord } from "@/features/recruiting/applications/own/own-record-data";
import { documentDownload } from "@/server/document-download";

/** Everything that is stored about an application, for whoever has its link. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/applications/[link]/download">,
): Promise<Response> {
  const { link } = await params;
  return await documentDownload(async () => {
    const document = await applicationRecord(await applicationAccess(link));
    return { name: [document.test, "your application"], document };
  });
}
