import "server-only";
import { randomUUID } from "node:crypto";
import type { EngineTask } from "@/engine/engine-task";
import type { PatternDocument } from "@/engine/pattern";
import { patternEditScope, type PatternAccess } from "@/features/patterns/access";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { AppError } from "@/server/errors";
import { log } from "@/server/log";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { inTransaction, type Connection } from "@/server/transaction";
import { ownGrading } from "./data";
import { readGradingRequest } from "./schema";

/** Per person and pattern, because a new request mostly replaces the earlier ones. */
const MOST_KEPT = 3;
const LOOK_EVERY_MS = 500;

/**
 * Has the worker grade a pattern that is being edited. The same key again makes no second request.
 *
 * @throws {AppError} "not-found" for someone else's key; where the pattern is not the viewer's to edit, nothing is stored.
 */
export async function requestGrading(
  access: PatternAccess,
  { idempotencyKey, pattern }: { readonly idempotencyKey: string; readonly pattern: PatternDocument },
): Promise<{ gradingId: string }> {
  const id = randomUUID();
  const row = { id, accountId: access.accountId, request: pattern, idempotencyKey };
  return await inTransaction(async (transaction) => {
    await transaction.pattern.update({
      where: patternEditScope(access),
      data: { gradings: { createMany: { data: [row], skipDuplicates: true } } },
      select: { id: true },
    });
    const kept = await transaction.grading.findFirst({
      where: { idempotencyKey, accountId: access.accountId, pattern: patternEditScope(access) },
      select: { id: true },
    });
    if (kept === null) throw new AppError("not-found");
    if (kept.id === id) await forgetOlder(transaction, access);
    return { gradingId: kept.id };
  });
}

async function forgetOlder(connection: Connection, access: PatternAccess): Promise<void> {
  const own = { accountId: access.accountId, pattern: patternEditScope(access) };
  const older = await connection.grading.findMany({
    where: own,
    orderBy: { createdAt: "desc" },
    skip: MOST_KEPT,
    select: { id: true },
  });
  await connection.grading.deleteMany({ where: { ...own, id: { in: older.map(({ id }) => id) } } });
}

/** Cancels a grading: the worker ends its thread. A finished one stays as it is. */
export async function endGrading(access: PatternAccess, gradingId: string): Promise<void> {
  const where = { ...ownGrading(access, gradingId), status: "waiting" as const };
  await database().grading.updateMany({ where, data: { status: "stopped" } });
}

/** The grading that has waited longest, null where none waits. */
export async function nextGrading(): Promise<string | null> {
  const row = await database().grading.findFirst({
    where: { status: "waiting" },
    orderBy: { createdAt: "asc" },
    select: { id: true },
  });
  return row?.id ?? null;
}

/** The worker's job: has the engine grade the pattern for as long as the person waits. */
export async function runGrading(gradingId: string, run: RunTask<EngineTask>): Promise<void> {
  const row = await database().grading.findFirst({
    where: { id: gradingId, status: "waiting" },
    select: { request: true },
  });
  if (row === null) return;
  const data = await graded(gradingId, { request: row.request, run });
  await database().grading.updateMany({ where: { id: gradingId, status: "waiting" }, data });
}

async function graded(gradingId: string, { request, run }: { request: unknown; run: RunTask<EngineTask> }) {
  try {
    const task = { kind: "grade", pattern: readGradingRequest(request) } as const;
    const output = await whileWaitedFor(gradingId, (signal) => run(task, signal));
    return output === null ? { status: "late" as const } : { status: "done" as const, output };
  } catch (error) {
    if (isDatabaseUnavailable(error) || error instanceof TaskInterrupted) throw error;
    log.error({ gradingId, reason: error instanceof Error ? error.message : "unknown" }, "a grading failed");
    return { status: "failed" as const };
  }
}

/** Checks from time to time whether the person still waits, and stops the grading if not. */
async function whileWaitedFor<Result>(gradingId: string, task: (signal: AbortSignal) => Promise<Result>) {
  const stopping = new AbortController();
  const look = async () => {
    if ((await database().grading.count({ where: { id: gradingId, status: "waiting" } })) === 0) stopping.abort();
  };
  // A database that is unavailable for a moment is asked again.
  const looking = setInterval(() => void look().catch(() => undefined), LOOK_EVERY_MS);
  try {
    return await task(stopping.signal);
  } finally {
    clearInterval(looking);
  }
}
