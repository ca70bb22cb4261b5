import { isPlanDone } from "@/features/results/changes/plan-data";
import { loadCall } from "@/features/calls/loaders";
import { foundOr404 } from "@/server/found-or-404";
import { readyAnswer } from "@/server/ready-answer";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/changes/[planId]/status">) {
  const { callId, planId } = await params;
  const { access } = await loadCall(callId);
  return readyAnswer(await foundOr404(isPlanDone(access, planId)));
}
