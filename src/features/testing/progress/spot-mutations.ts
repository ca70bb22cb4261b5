import "server-only";
import { openCallEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import { testedPattern } from "@/features/calls/tested-pattern-data";
import { latestRevision } from "@/features/patterns/data";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { giveTestBack } from "../home/give-back-mutations";
import { releasedContent } from "./released-copy";

/**
 * Opens the spots of testers at work of whom nothing is heard, for somebody else. Their reports and what they typed stay;
 * others of the call are left alone, such as those who are finished.
 *
 * @returns how many spots were opened.
 * @throws {AppError} "closed" if the call is closed or not the viewer's to edit; "changed-meanwhile" if none of them is at work.
 */
export async function freeSpots(access: CallAccess, testerIds: readonly string[]): Promise<number> {
  return await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const { document } = await latestRevision(access.pattern, transaction);
    const { measurements } = await testedPattern(access, document, transaction);
    const measured = measurements.map(({ id }) => id);
    const now = new Date();
    const { count } = await transaction.tester.updateMany({
      where: {
        ...{ id: { in: [...testerIds] }, call: openCallEditScope(access) },
        ...{ acceptedAt: { not: null }, stoppedAt: null },
        OR: [{ reportedAt: null }, { NOT: { answeredMeasurements: { array_contains: measured } } }],
      },
      data: { stoppedAt: now, freedAt: now },
    });
    if (count === 0) throw new AppError("changed-meanwhile", NOBODY_AT_WORK);
    const testers = { id: { in: [...testerIds] }, call: openCallEditScope(access), freedAt: now };
    await writeChangeable(transaction, {
      ...{ kind: "place-released", changedAs: "spot-opened", testers },
      content: releasedContent,
    });
    return count;
  });
}

const NOBODY_AT_WORK =
  "No spot was opened: nobody whom you chose is still making the garment. Choose testers who have accepted and have not sent everything.";

/**
 * Gives a spot back to the tester of whom nothing was heard, as long as their size may have one more.
 *
 * @throws {AppError} "closed" as above; "changed-meanwhile" if it was not opened, or they continued; "no-place" if it is filled.
 */
export async function returnSpot(access: CallAccess, testerId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const call = openCallEditScope(access);
    const isBack = await giveTestBack(transaction, { tester: { id: testerId, call, freedAt: { not: null } }, call });
    if (!isBack)
      throw new AppError(
        "changed-meanwhile",
        "They have their spot already. Reload the page to see how they are doing.",
      );
  });
}
