import { loadCall } from "@/features/calls/loaders";
import { isPlacingUpdating } from "@/features/recruiting/places/placing-data";
import { readyAnswer } from "@/server/ready-answer";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/sizes/state">) {
  const { access } = await loadCall((await params).callId);
  return readyAnswer(!(await isPlacingUpdating(access)));
}
