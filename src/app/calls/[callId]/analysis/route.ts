import { analysisProgress } from "@/features/results/data";
import { loadCall } from "@/features/calls/loaders";
import { readyAnswer } from "@/server/ready-answer";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/analysis">) {
  const { access, call } = await loadCall((await params).callId);
  const { status } = await analysisProgress(access, call.version);
  return readyAnswer(status !== "updating");
}
