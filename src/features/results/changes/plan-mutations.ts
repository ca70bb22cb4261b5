import "server-only";
import { applyEdits } from "@/engine/editing";
import type { EngineTask } from "@/engine/engine-task";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { passagesWith } from "@/engine/instructions";
import { parsePattern, type CallDocument, type PatternDocument } from "@/engine/pattern";
import { differencesSchema, type Differences } from "@/engine/results";
import { callEditScope, callScope, unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import type { NumberChange } from "@/features/calls/correction-schema";
import { callSnapshot } from "@/features/calls/data";
import { patternEditScope, patternScope } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { noteCorrectedSizes, noteInstructionFixes } from "@/features/patterns/follow-up/follow-up-mutations";
import { saveRevision } from "@/features/patterns/mutations";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { AppError } from "@/server/errors";
import { log } from "@/server/log";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { idempotencyKey } from "@/server/idempotency-key";
import { inTransaction, type Connection } from "@/server/transaction";
import { unpublishedChanges } from "../early-corrections-data";
import { planRequestSchema, readPlanOutput, type PlanOutput, type PlanRequest } from "./plan-schema";
import { correctionText, textFixes } from "./text-fixes";

interface NewPlan {
  readonly request: PlanRequest;
  /** The revision that the designer saw. */
  readonly baseNumber: number;
  readonly idempotencyKey: string;
}

/**
 * Requests a plan over the analysis that the page showed. The same key again makes no second plan.
 *
 * @throws {AppError} "changed-meanwhile" where there is a newer revision, or no analysis; "not-found" where the
 *   call is not the viewer's to edit.
 */
export async function requestPlan(
  access: CallAccess,
  { request, baseNumber, idempotencyKey }: NewPlan,
): Promise<{ planId: string }> {
  return await inTransaction(async (transaction) => {
    const { number } = await latestRevision(access.pattern, transaction);
    if (number !== baseNumber) throw new AppError("changed-meanwhile");
    const sent = await transaction.plan.findFirst({ where: { idempotencyKey, call: callEditScope(access) } });
    if (sent !== null) return { planId: sent.id };
    const analysis = await transaction.analysis.findFirst({
      where: { call: callScope(access), status: "done" },
      orderBy: [{ callVersion: "desc" }, { createdAt: "desc" }],
      select: { callVersion: true, engineVersion: true, differences: true },
    });
    if (analysis?.differences == null) throw new AppError("changed-meanwhile");
    const { plans } = await transaction.call.update({
      where: callEditScope(access),
      data: {
        plans: {
          create: {
            ...{ request, baseNumber, idempotencyKey, accountId: access.pattern.accountId },
            ...{ callVersion: analysis.callVersion, engineVersion: analysis.engineVersion },
            differences: analysis.differences,
          },
        },
      },
      select: { plans: { where: { idempotencyKey }, select: { id: true } } },
    });
    const [made] = plans;
    if (made === undefined) throw new Error("a plan was made and is not there");
    return { planId: made.id };
  });
}

/**
 * Saves a plan's pattern as the next revision, and freezes its evidence. What is wrong in the text becomes a to-do, and the
 * sizes that are worked otherwise are to be tested again. Saving it again returns the same revision.
 *
 * @param tells publishes what is wrong in the text as a correction to the testers of those sizes.
 * @returns the revision's number.
 * @throws {AppError} "changed-meanwhile" where another revision came first; "not-found" where the plan is not the viewer's to save or was not calculated.
 */
export async function savePlan(
  access: CallAccess,
  { planId, reason, tells = false }: { planId: string; reason: string; tells?: boolean },
): Promise<{ number: number }> {
  return await inTransaction(async (transaction) => {
    const row = await transaction.plan.findFirst({ where: { id: planId, call: callEditScope(access) } });
    const output = row === null || row.output === null ? null : readPlanOutput(row.output);
    if (row?.output == null || output?.status !== "revised") throw new AppError("not-found");
    const request = planRequestSchema.parse(row.request);
    if (request.kind !== "proposals") throw new AppError("not-found");
    const { callId, baseNumber, callVersion, engineVersion } = row;
    const again = await transaction.revisionEvidence.findFirst({
      where: { callId, plan: row.output, revision: { number: baseNumber + 1, pattern: patternScope(access.pattern) } },
      select: { revision: { select: { number: true } } },
    });
    if (again !== null) return again.revision;
    const { document: before } = await latestRevision(access.pattern, transaction);
    const document = output.pattern;
    const fixes = textFixes({ before, after: document, instructionErrors: output.instructionErrors });
    const { revisionId, number } = await saveRevision(access.pattern, { document, reason, baseNumber }, transaction);
    await transaction.revision.update({
      where: { id: revisionId, pattern: patternEditScope(access.pattern) },
      data: {
        evidence: {
          create: {
            ...{ callId, callVersion, engineVersion },
            take: request.take.map((taken) => ({ ...taken })),
            analysis: JSON.stringify(row.differences),
            plan: row.output,
            instructionErrors: output.instructionErrors.map((wrong) => ({ ...wrong })),
          },
        },
      },
      select: { id: true },
    });
    await noteCorrectedSizes(transaction, { revisionId, before, after: document, textFixes: fixes });
    await noteInstructionFixes(transaction, { revisionId, pattern: document, fixes });
    if (tells) await tellTesters(transaction, { access, planId, revisionId, document, fixes });
    return { number };
  });
}

interface Told {
  readonly access: CallAccess;
  readonly planId: string;
  readonly revisionId: string;
  readonly document: PatternDocument;
  readonly fixes: readonly NumberChange[];
}

/** Publishes what is wrong in the text, apart from what a correction says already. */
async function tellTesters(
  transaction: Connection,
  { access, planId, revisionId, document, fixes }: Told,
): Promise<void> {
  const numbers = await unpublishedChanges(access, fixes, transaction);
  if (numbers.length === 0) return;
  const { sizes, instructions = "" } = document;
  const passages = numbers.flatMap(({ size, was: number }) =>
    passagesWith(instructions, sizes.length, { size: sizes.findIndex(({ id }) => id === size), number }),
  );
  const places = new Map(passages.map(({ place }) => [place.block, place]));
  const [place = null, ...morePlaces] = places.values();
  const correction = {
    ...{ revisionId, place, morePlaces, numbers },
    text: correctionText(numbers, document),
    sizes: sizes.map(({ id }) => id).filter((id) => numbers.some(({ size }) => size === id)),
    idempotencyKey: idempotencyKey(planId, "correction"),
  };
  await publishCorrection(access, correction, transaction);
}

/** The plan that has waited longest, null where none waits. */
export async function nextPlan(): Promise<string | null> {
  const row = await database().plan.findFirst({
    where: { output: null },
    orderBy: { createdAt: "asc" },
    select: { id: true },
  });
  return row?.id ?? null;
}

/** The worker's job: has the engine calculate a plan, once. One that is outdated by new reports or revisions is marked so. */
export async function runPlan(planId: string, run: RunTask<EngineTask>): Promise<void> {
  const plan = await database().plan.findUnique({ where: { id: planId } });
  if (plan === null || plan.output !== null) return;
  const access = await unsafeOwnerAccess(plan.callId);
  const output = access === null ? status("overtaken") : await outcomeOf(access, { plan, run });
  await database().plan.updateMany({ where: { id: planId, output: null }, data: { output } });
}

interface PlanToRun {
  readonly plan: {
    readonly request: unknown;
    readonly callVersion: number;
    readonly engineVersion: string;
    readonly differences: unknown;
  };
  readonly run: RunTask<EngineTask>;
}

async function outcomeOf(access: CallAccess, { plan, run }: PlanToRun): Promise<string> {
  try {
    const { version, document: call } = await callSnapshot(access);
    if (version !== plan.callVersion || plan.engineVersion !== ENGINE_VERSION) return status("overtaken");
    const request = planRequestSchema.parse(plan.request);
    const task = taskOf(request, { call, differences: differencesSchema.parse(plan.differences) });
    return typeof task === "string" ? task : ((await run(task)) ?? status("stopped"));
  } catch (error) {
    if (isDatabaseUnavailable(error) || error instanceof TaskInterrupted) throw error;
    log.error({ reason: error instanceof Error ? error.message : "unknown" }, "a plan failed");
    return status("failed");
  }
}

/** The engine's task, or the finished answer where the typed numbers cannot be read. */
function taskOf(
  request: PlanRequest,
  { call, differences }: { call: CallDocument; differences: Differences },
): EngineTask | string {
  if (request.kind === "proposals") return { kind: "revise", request: { call, take: request.take } };
  const { document, faults } = applyEdits(call.pattern, request.typed, request.unit);
  if (faults.length > 0) return faultsOutput(faults.map(({ path, message }) => ({ path, says: message })));
  const parsed = parsePattern(document);
  if (!parsed.ok) return faultsOutput(parsed.faults);
  return { kind: "expect", call, cells: differences.cells, revised: parsed.document };
}

function faultsOutput(faults: Readonly<Extract<PlanOutput, { status: "faults" }>["faults"]>): string {
  return JSON.stringify({ status: "faults", faults });
}

function status(name: "overtaken" | "stopped" | "failed"): string {
  return JSON.stringify({ status: name });
}
