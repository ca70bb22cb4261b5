import { testerAccess } from "@/features/testing/home/request-access";
import { arePhotosPreparing } from "@/features/testing/photos/preparing-data";
import { foundOr404 } from "@/server/found-or-404";
import { readyAnswer } from "@/server/ready-answer";

export async function GET(_request: Request, { params }: RouteContext<"/testing/[testerId]/photos/state">) {
  const access = await foundOr404(testerAccess((await params).testerId));
  return readyAnswer(!(await arePhotosPreparing(access)));
}
