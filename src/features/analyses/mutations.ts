import "server-only";
import type { EngineTask } from "@/engine/engine-task";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { callScope, unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { database } from "@/server/database";
import { enqueue } from "@/server/queue";
import type { Reckon } from "@/server/reckon";
import { analysisInput } from "./analysis-input";
import { storedAnalysis } from "./data";

/** The worker's job: reckons a call as it stands now. A call that is gone meanwhile needs nothing. */
export async function reckonCall(callId: string, reckon: Reckon<EngineTask>): Promise<void> {
  const access = await unsafeOwnerAccess(callId);
  if (access !== null) await reckonAnalysis(access, reckon);
}

/** Reckons the call as it stands now and keeps what the engine prints; nothing to do where that is kept already. */
export async function reckonAnalysis(access: CallAccess, reckon: Reckon<EngineTask>): Promise<void> {
  const call = await callDocument(access);
  const input = analysisInput(call);
  if ((await storedAnalysis(access, input)) !== null) return;
  const analysis = { ...input, output: await reckon({ kind: "gaps", call }) };
  await database().call.update({
    where: callScope(access),
    data: { analyses: { createMany: { data: [analysis], skipDuplicates: true } } },
    select: { id: true },
  });
}

/** Asks for every call whose newest analysis by this engine is older than its newest report, decision or revision. */
export async function enqueueUnreckonedCalls(): Promise<void> {
  const calls = await database().$queryRaw<{ id: string }[]>`
    SELECT call.id FROM call
    WHERE coalesce(
      (SELECT max(created_at) FROM analysis WHERE call_id = call.id AND engine_version = ${ENGINE_VERSION}),
      '-infinity'
    ) < greatest(
      call.created_at,
      (SELECT max(created_at) FROM revision WHERE pattern_id = call.pattern_id),
      (SELECT max(report.created_at) FROM report JOIN tester ON tester.id = report.tester_id WHERE tester.call_id = call.id)
    )`;
  for (const { id } of calls) await enqueue(database(), "reckon-call", id);
}
