import "server-only";
import { holdOpenCall } from "@/features/calls/mutations";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { openTesterScope, testerScope, type TesterAccess } from "./access";
import { giveTestBack } from "./give-back-mutations";
import { writeGivenBack } from "./given-back-mutations";
import type { TappedStatus } from "./schema";

interface NewMilestone {
  readonly status: TappedStatus;
  readonly note: string;
  /** Made once for each page view; the same key again stores nothing. */
  readonly idempotencyKey: string;
}

/** Stores a tester's progress update. @throws {AppError} "closed" if the call is closed or the tester has stopped. */
export async function storeMilestone(
  access: TesterAccess,
  { status, note, idempotencyKey }: NewMilestone,
): Promise<void> {
  const { testerId } = access;
  await inTransaction(async (transaction) => {
    const { count } = await transaction.tester.updateMany({
      where: { ...openTesterScope(access), stoppedAt: null },
      data: { stoppedAt: null },
    });
    if (count === 0) throw new AppError("closed", OVER);
    await transaction.milestone.createMany({
      data: [{ testerId, status, note, idempotencyKey }],
      skipDuplicates: true,
    });
  });
}

interface Stop {
  readonly note: string;
  readonly idempotencyKey: string;
}

/**
 * A tester stops: the spot can be filled, and what was sent stays. Idempotent.
 *
 * @throws {AppError} "closed" if the call is closed.
 */
export async function stopTest(access: TesterAccess, { note, idempotencyKey }: Stop): Promise<void> {
  const { testerId } = access;
  await inTransaction(async (transaction) => {
    await lockOwnCall(transaction, access);
    const { count } = await transaction.tester.updateMany({
      where: { ...openTesterScope(access), stoppedAt: null },
      data: { stoppedAt: new Date() },
    });
    if (count === 0) return;
    const data = [{ testerId, status: "stop" as const, note, idempotencyKey }];
    await transaction.milestone.createMany({ data, skipDuplicates: true });
    await writeGivenBack(transaction, testerScope(access), note);
  });
}

/**
 * Continues after stopping, as long as the size may have one more tester. What the designer ended stays ended.
 *
 * @throws {AppError} "closed" if the call is closed; "no-place" if the spot has been filled.
 */
export async function goOnAfterAll(access: TesterAccess, idempotencyKey: string): Promise<void> {
  const { testerId } = access;
  await inTransaction(async (transaction) => {
    await lockOwnCall(transaction, access);
    const tester = { ...openTesterScope(access), stoppedByDesigner: false };
    const call = { id: access.callId, testers: { some: testerScope(access) } };
    if (!(await giveTestBack(transaction, { tester, call, refusal: FILLED }))) return;
    const data = [{ testerId, status: "track" as const, idempotencyKey }];
    await transaction.milestone.createMany({ data, skipDuplicates: true });
  });
}

const OVER = "This test is closed, or yours has ended, so no update can be sent.";
const FILLED =
  "Your spot has been filled in the meantime, so you cannot continue. Tell the designer if you would like to.";

/** Locks the call's row, so that it is not closed and no spot is filled in between. */
async function lockOwnCall(transaction: Connection, access: TesterAccess): Promise<void> {
  const where = { id: access.callId, testers: { some: testerScope(access) } };
  if (!(await holdOpenCall(transaction, where))) throw new AppError("closed", OVER);
}
