import "server-only";
import { gaps } from "@/engine/gaps";
import { callAccess, callScope, type CallAccess } from "@/features/calls/access";
import { callDocument, callsOfPattern } from "@/features/calls/data";
import type { PatternAccess } from "@/features/patterns/access";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { analysisInput } from "./analysis-input";
import { storedAnalysis } from "./data";

/** Reckons the call as it stands now and keeps what the engine prints; nothing to do where that is kept already. */
export async function reckonAnalysis(access: CallAccess): Promise<void> {
  const document = await callDocument(access);
  const input = analysisInput(document);
  if ((await storedAnalysis(access, input)) !== null) return;
  const analysis = { ...input, output: JSON.stringify(gaps(document)) };
  await database().call.update({
    where: callScope(access),
    data: { analyses: { createMany: { data: [analysis], skipDuplicates: true } } },
    select: { id: true },
  });
}

/** Reckons every call of a pattern, after its newest revision has changed what they are compared with. */
export async function reckonPatternAnalyses(viewer: Viewer, pattern: PatternAccess): Promise<void> {
  for (const callId of await callsOfPattern(pattern)) await reckonAnalysis(await callAccess(viewer, callId, "editor"));
}
