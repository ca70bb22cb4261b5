import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";

/**
 * Takes a closed call out of its designer's lists. Nothing is sent for it any more: mail that still waits is discarded.
 *
 * @throws {AppError} "changed-meanwhile" if it is open, or archived already.
 */
export async function archiveCall(access: CallAccess): Promise<void> {
  await inTransaction(async (transaction) => {
    const { count } = await transaction.call.updateMany({
      where: { ...callEditScope(access), status: "closed", archivedAt: null },
      data: { archivedAt: new Date() },
    });
    if (count === 0) throw new AppError("changed-meanwhile", "This test is open again, or already archived.");
    await transaction.message.deleteMany({ where: { call: callEditScope(access), dueAt: { not: null } } });
  });
}

/** Puts an archived call back into its designer's lists, closed as it was. */
export async function restoreCall(access: CallAccess): Promise<void> {
  const { count } = await database().call.updateMany({
    where: { ...callEditScope(access), archivedAt: { not: null } },
    data: { archivedAt: null },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This test is not archived any more.");
}
