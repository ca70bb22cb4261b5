import "server-only";
import { patternAccess } from "@/features/patterns/access";
import { foundOr404 } from "@/server/found-or-404";
import { requireViewer } from "@/server/viewer";
import { gradingAnswer } from "./data";
import type { GradingAnswer } from "./schema";

/** The current state of a grading that the viewer requested. */
export async function loadGrading(patternId: string, gradingId: string): Promise<GradingAnswer> {
  return await foundOr404(ownAnswer(patternId, gradingId));
}

async function ownAnswer(patternId: string, gradingId: string): Promise<GradingAnswer> {
  const access = await patternAccess(await requireViewer(), patternId, "editor");
  return await gradingAnswer(access, gradingId);
}
