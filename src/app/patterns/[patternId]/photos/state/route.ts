import { patternAccess } from "@/features/patterns/access";
import { isSamplePreparing } from "@/features/testing/photos/preparing-data";
import { foundOr404 } from "@/server/found-or-404";
import { readyAnswer } from "@/server/ready-answer";
import { requireViewer } from "@/server/viewer";

export async function GET(_request: Request, { params }: RouteContext<"/patterns/[patternId]/photos/state">) {
  const { patternId } = await params;
  const access = await foundOr404(patternAccess(await requireViewer(), patternId, "viewer"));
  return readyAnswer(!(await isSamplePreparing(access)));
}
