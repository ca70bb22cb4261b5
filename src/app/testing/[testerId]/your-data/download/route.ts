import { applicationRecords } from "@/features/recruiting/applications/own/own-record-data";
import { testerScope } from "@/features/testing/home/access";
import { ownRecord } from "@/features/testing/home/own-record-data";
import { testerAccess } from "@/features/testing/home/request-access";
import { documentDownload } from "@/server/document-download";

/** Everything that is stored about a tester, for them. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/testing/[testerId]/your-data/download">,
): Promise<Response> {
  const { testerId } = await params;
  return await documentDownload(async () => {
    const access = await testerAccess(testerId);
    const [tester, applications] = await Promise.all([
      ownRecord(access),
      applicationRecords({ tester: testerScope(access) }),
    ]);
    return { name: [tester.test, "your data"], document: { tester, applications } };
  });
}
