import "server-only";
import type { EngineTask } from "@/engine/engine-task";
import type { Taken } from "@/engine/revision";
import { callEditScope, callScope, unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { patternEditScope, patternScope } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { saveRevision } from "@/features/patterns/mutations";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { enqueue } from "@/server/queue";
import type { Reckon } from "@/server/reckon";
import { inTransaction } from "@/server/transaction";
import { analysisInput } from "./analysis-input";
import { readPlanOutput, readTake } from "./plan-schema";

interface NewPlan {
  readonly take: readonly Taken[];
  /** The revision that she saw. */
  readonly baseNumber: number;
  readonly submissionKey: string;
}

/**
 * Asks what becomes of the pattern where these proposals are taken. The same key again makes no second plan.
 *
 * @throws {AppError} "changed-meanwhile" where another revision stands now; "not-found" where it is not the viewer's to edit.
 */
export async function planRevision(
  access: CallAccess,
  { take, baseNumber, submissionKey }: NewPlan,
): Promise<{ planId: string }> {
  const [call, { number }] = await Promise.all([callDocument(access), latestRevision(access.pattern)]);
  if (number !== baseNumber) throw new AppError("changed-meanwhile");
  const plan = {
    ...analysisInput(call),
    take: take.map((taken) => ({ ...taken })),
    baseNumber,
    accountId: access.pattern.accountId,
  };
  return await inTransaction(async (transaction) => {
    const sent = await transaction.plan.findFirst({ where: { submissionKey, call: callEditScope(access) } });
    if (sent !== null) return { planId: sent.id };
    const { plans } = await transaction.call.update({
      where: callEditScope(access),
      data: { plans: { create: { ...plan, submissionKey } } },
      select: { plans: { where: { submissionKey }, select: { id: true } } },
    });
    const [made] = plans;
    if (made === undefined) throw new Error("a plan was made and is not there");
    await enqueue(transaction, "reckon-plan", made.id);
    return { planId: made.id };
  });
}

/**
 * Saves what a plan makes of the pattern as the next revision, and freezes what it rests on. Saved again, it is the same one.
 *
 * @returns the revision's number.
 * @throws {AppError} "changed-meanwhile" where another revision came first; "not-found" where the plan is not the viewer's to save or was not worked out.
 */
export async function savePlan(
  access: CallAccess,
  { planId, reason }: { planId: string; reason: string },
): Promise<{ number: number }> {
  return await inTransaction(async (transaction) => {
    const row = await transaction.plan.findFirst({ where: { id: planId, call: callEditScope(access) } });
    const output = row === null || row.output === null ? null : readPlanOutput(row.output);
    if (row?.output == null || output?.status !== "revised") throw new AppError("not-found");
    const { callId, baseNumber, inputHash, engineVersion } = row;
    const again = await transaction.revisionEvidence.findFirst({
      where: { callId, plan: row.output, revision: { number: baseNumber + 1, pattern: patternScope(access.pattern) } },
      select: { revision: { select: { number: true } } },
    });
    if (again !== null) return again.revision;
    const analysis = await transaction.analysis.findFirstOrThrow({
      where: { inputHash, engineVersion, call: callScope(access), output: { not: null } },
    });
    const document = output.pattern;
    const { revisionId, number } = await saveRevision(access.pattern, { document, reason, baseNumber }, transaction);
    const take = readTake(row.take).map((taken) => ({ ...taken }));
    await transaction.revision.update({
      where: { id: revisionId, pattern: patternEditScope(access.pattern) },
      data: {
        evidence: {
          create: {
            callId,
            take,
            inputHash,
            engineVersion,
            analysis: analysis.output ?? "",
            plan: row.output,
            misworked: output.misworked.map((wrong) => ({ ...wrong })),
          },
        },
      },
      select: { id: true },
    });
    return { number };
  });
}

/** The worker's job: has the engine work out a plan, once. One that reports or revisions have overtaken is told so. */
export async function reckonPlan(planId: string, reckon: Reckon<EngineTask>): Promise<void> {
  const plan = await database().plan.findUnique({ where: { id: planId } });
  if (plan === null || plan.output !== null) return;
  const access = await unsafeOwnerAccess(plan.callId);
  if (access === null) return;
  const output = await workOut(access, { plan, reckon });
  await database().plan.updateMany({ where: { id: planId, output: null, call: callScope(access) }, data: { output } });
}

async function workOut(
  access: CallAccess,
  { plan, reckon }: { plan: { take: unknown; inputHash: string; engineVersion: string }; reckon: Reckon<EngineTask> },
): Promise<string> {
  const call = await callDocument(access);
  const { inputHash, engineVersion } = analysisInput(call);
  if (inputHash !== plan.inputHash || engineVersion !== plan.engineVersion) return told("overtaken");
  const request = { call, take: readTake(plan.take) };
  return (await reckon({ kind: "revise", request })) ?? told("stopped");
}

function told(status: "overtaken" | "stopped"): string {
  return JSON.stringify({ status });
}
