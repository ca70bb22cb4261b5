import "server-only";
import type { EngineTask } from "@/engine/engine-task";
import { callPriorSchema, type CallPrior, type EarlierCall } from "@/engine/pattern";
import { callEditScope, teachingCalls, type CallAccess } from "@/features/calls/access";
import { raiseCallVersion } from "@/features/calls/mutations";
import { firstRevisionCall } from "@/features/calls/prior-data";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { AppError } from "@/server/errors";
import { log } from "@/server/log";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { inSnapshot, inTransaction, type Connection } from "@/server/transaction";

/**
 * Keeps with a call that has its first report what the designer's earlier tests show by then; later it stays as it is. The
 * worker does it before the first analysis, which is the first to read it.
 *
 * Earlier tests that cannot be read, or that cannot be computed with in time, teach nothing, and are not tried again.
 *
 * @param access of the designer, who owns the pattern.
 */
export async function learnFromEarlier(access: CallAccess, run: RunTask<EngineTask>): Promise<void> {
  const calls = await callsToLearnFrom(access);
  if (calls === null) return;
  const prior = calls.length === 0 ? null : await learned(access, { calls, run });
  await database().call.updateMany({
    where: { AND: [callEditScope(access), { priorAt: null }] },
    data: { prior: prior === null ? Prisma.DbNull : { ...prior }, priorAt: new Date() },
  });
}

/** Null where there is no report yet, or it was done. */
async function callsToLearnFrom(access: CallAccess): Promise<EarlierCall[] | null> {
  const first = await database().report.findFirst({
    where: { tester: { call: { AND: [callEditScope(access), { priorAt: null }] } } },
    orderBy: { createdAt: "asc" },
    select: { createdAt: true },
  });
  if (first === null) return null;
  return await inSnapshot(async (snapshot) => {
    const calls: EarlierCall[] = [];
    for (const earlier of await teachingCalls(access, { before: first.createdAt, connection: snapshot })) {
      const read = await readOrNull(earlier, snapshot);
      if (read !== null) calls.push(read);
    }
    return calls;
  });
}

async function readOrNull(earlier: CallAccess, snapshot: Connection): Promise<EarlierCall | null> {
  try {
    return await firstRevisionCall(earlier, snapshot);
  } catch (error) {
    if (isDatabaseUnavailable(error)) throw error;
    log.error({ callId: earlier.callId }, "an earlier test cannot be read and teaches nothing");
    return null;
  }
}

async function learned(
  { callId }: CallAccess,
  { calls, run }: { readonly calls: readonly EarlierCall[]; readonly run: RunTask<EngineTask> },
): Promise<CallPrior | null> {
  try {
    const printed = await run({ kind: "learn", calls });
    return printed === null ? null : callPriorSchema.nullable().parse(JSON.parse(printed));
  } catch (error) {
    if (error instanceof TaskInterrupted) throw error;
    log.error({ callId }, "nothing could be learned from earlier tests");
    return null;
  }
}

/**
 * Whether a call's results start from what earlier tests showed; it is then analysed again.
 *
 * @throws {AppError} "not-found" if the viewer may not edit.
 */
export async function usePrior(access: CallAccess, isUsed: boolean): Promise<void> {
  await inTransaction(async (transaction) => {
    const { count } = await transaction.call.updateMany({ where: callEditScope(access), data: { usesPrior: isUsed } });
    if (count === 0) throw new AppError("not-found");
    await raiseCallVersion(transaction, access.callId);
  });
}
