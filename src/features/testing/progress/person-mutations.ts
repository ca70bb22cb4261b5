import "server-only";
import { openCallEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { giveTestBack } from "../home/give-back-mutations";
import { readTheirTest } from "./own-days-data";
import { endedContent } from "./released-copy";

/**
 * The designer ends a tester's test: what was sent stays, nothing more can be sent, and the spot is open.
 *
 * @throws {AppError} "closed"; "changed-meanwhile" if they have stopped or not accepted.
 */
export async function endTest(access: CallAccess, testerId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const { count } = await transaction.tester.updateMany({
      where: { id: testerId, call: openCallEditScope(access), acceptedAt: { not: null }, stoppedAt: null },
      data: { stoppedAt: new Date(), stoppedByDesigner: true },
    });
    if (count === 0) throw new AppError("changed-meanwhile", NOT_TESTING);
    const testers = { id: testerId, call: openCallEditScope(access) };
    await writeChangeable(transaction, {
      ...{ kind: "place-released", changedAs: "test-ended", testers },
      content: endedContent,
    });
  });
}

/**
 * Takes back that a designer ended a tester's test, as long as their size may have one more.
 *
 * @throws {AppError} "closed"; "no-place"; "changed-meanwhile" if it is not ended, or they stopped themselves.
 */
export async function letGoOn(access: CallAccess, testerId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const call = openCallEditScope(access);
    const isGoingOn = await giveTestBack(transaction, {
      tester: { id: testerId, call, stoppedByDesigner: true },
      call,
    });
    if (!isGoingOn) throw new AppError("changed-meanwhile", NOT_ENDED);
  });
}

/**
 * Gives a tester days of their own; the day they start stays, or becomes the day of the swatch if that is earlier.
 *
 * @param days null: the call's days stand for them again.
 * @throws {AppError} "closed"; "not-found" if there is no such tester, or no day to begin with.
 */
export async function setOwnDays(
  access: CallAccess,
  testerId: string,
  days: Pick<TesterDates, "swatchBy" | "reportBy"> | null,
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const before = (await readTheirTest(access, testerId, transaction))?.days?.days;
    if (before === undefined) throw new AppError("not-found");
    const { count } = await transaction.tester.updateMany({
      where: { id: testerId, call: openCallEditScope(access) },
      data: { dates: days === null ? Prisma.DbNull : { startOn: firstDay(before.startOn, days.swatchBy), ...days } },
    });
    if (count === 0) throw new AppError("not-found");
  });
}

/** Days as `2027-03-14` sort as texts. */
function firstDay(one: string, other: string): string {
  return one < other ? one : other;
}

const NOT_TESTING = "They have stopped or not accepted in the meantime. Reload the page to see it.";
const NOT_ENDED = "Their test is not ended by you. Reload the page to see how it stands.";
