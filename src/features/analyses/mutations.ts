import "server-only";
import { gaps } from "@/engine/gaps";
import { callScope, type CallAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { database } from "@/server/database";
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
