import { randomUUID } from "node:crypto";
import { beginDraft } from "@/engine/editing";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import type { Taken } from "@/engine/revision";
import { reckonCall } from "@/features/analyses/mutations";
import { planRevision, reckonPlan, savePlan } from "@/features/analyses/plan-mutations";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { endGrading, reckonGrading, requestGrading } from "@/features/gradings/mutations";
import type { PatternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { saveDraft } from "@/features/patterns/draft-mutations";
import { createInvitation, withdrawInvitation } from "@/features/patterns/invitation-mutations";
import { saveRevision } from "@/features/patterns/mutations";
import { storeCall } from "@/features/reports/document-mutations";
import { decide } from "@/features/reports/mutations";
import { database } from "@/server/database";
import type { Reckon } from "@/server/reckon";
import type { Viewer } from "@/server/viewer";
import { highsSolver } from "@/solver/highs-solver";
import { saltmarshCall } from "../../../prisma/demo/saltmarsh-call";
import { joins } from "./invented-people";

const NECK_BAND: Taken = { kind: "allowance", id: "neck-band", by: "input" };
const BODY: Taken = { kind: "count", id: "body", size: "size-2x", by: "input" };

const solver = await highsSolver();

/** The engine, without a thread of its own. */
export const compute: Reckon<EngineTask> = (task) => Promise.resolve(runEngineTask(task, solver));

/** What becomes of a task that takes too long. */
export const runOutOfTime: Reckon<EngineTask> = () => Promise.resolve(null);

/**
 * A pattern whose call was imported: decisions on its reports, plans saved, left open and not computed, revisions from a
 * plan and by hand, a draft, edits that came too late, gradings and invitations.
 */
export async function inventedPattern(owner: Viewer, helpers: { editor: Viewer; viewer: Viewer }): Promise<void> {
  const { callId } = await storeCall(owner, { call: saltmarshCall().call, title: "Imported test (invented)" });
  const access = await callAccess(owner, callId, "owner");
  const { pattern } = access;
  const editor = await joins(helpers.editor, pattern, "editor");
  await joins(helpers.viewer, pattern, "viewer");
  await openInvitations(pattern);
  await decisions(access);
  await reckonCall(callId, compute);
  await plan(access, [NECK_BAND]);
  await savePlan(access, { planId: await plan(access, [BODY]), reason: "The instructions say 7 stitches too many" });
  await reckonCall(callId, compute);
  const { document, number: baseNumber } = await latestRevision(pattern);
  await saveRevision(editor, { document: { ...document, name: "Saltmarsh, renamed" }, reason: "A name", baseNumber });
  await reckonCall(callId, compute);
  await plan(access, [NECK_BAND]);
  await planRevision(access, { take: [NECK_BAND], baseNumber: baseNumber + 1, submissionKey: randomUUID() });
  await edits(pattern, editor);
  await gradingJobs(pattern);
}

async function plan(access: CallAccess, take: readonly Taken[]): Promise<string> {
  const { number: baseNumber } = await latestRevision(access.pattern);
  const { planId } = await planRevision(access, { take, baseNumber, submissionKey: randomUUID() });
  await reckonPlan(planId, compute);
  return planId;
}

/** The first testers' first readings are decided by the designer, one of them twice. */
async function decisions(access: CallAccess): Promise<void> {
  const testers = await database().tester.findMany({
    where: { callId: access.callId },
    orderBy: { position: "asc" },
    take: 3,
  });
  for (const [at, { code: tester }] of testers.entries()) {
    const decision = at === 1 ? "set-aside" : "keep";
    await decide(access, { tester, part: "readings", position: at, decision });
    await decide(access, { tester, part: "swatches", position: 0, decision: "keep" });
  }
}

async function edits(owner: PatternAccess, editor: PatternAccess): Promise<void> {
  const { document, number: baseNumber } = await latestRevision(owner);
  const named = (name: string) => {
    const draft = beginDraft(document, "cm");
    return { ...draft, pattern: { ...draft.pattern, name } };
  };
  await saveDraft(owner, { content: named("A name in a draft"), version: 0, baseNumber });
  await saveDraft(editor, { content: named("A name that came too late"), version: 0, baseNumber });
}

async function gradingJobs(owner: PatternAccess): Promise<void> {
  const { document: pattern } = await latestRevision(owner);
  const request = async () => (await requestGrading(owner, { pattern, submissionKey: randomUUID() })).gradingId;
  await reckonGrading(await request(), compute);
  await reckonGrading(await request(), runOutOfTime);
  await endGrading(owner, await request());
}

async function openInvitations(owner: PatternAccess): Promise<void> {
  await createInvitation(owner, { role: "viewer", note: "Not answered yet" });
  await createInvitation(owner, { role: "editor", note: "Taken back" });
  const { id } = await database().invitation.findFirstOrThrow({ where: { note: "Taken back" } });
  await withdrawInvitation(owner, id);
}
