import "server-only";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { testerScope, type TesterAccess } from "../home/access";

/**
 * Stores whether what a test shows of its tester's tape and garment may be used in their later tests with the same designer. Where
 * they no longer allow it, what was kept of it with later tests is deleted, and those are calculated again.
 *
 * @throws {AppError} "not-found" where they have no account, by which alone they are known again.
 */
export async function storeHabitConsent(access: TesterAccess, isAllowed: boolean): Promise<void> {
  const tester = testerScope(access);
  await inTransaction(async (transaction) => {
    const { count } = await transaction.tester.updateMany({
      where: { AND: [tester, { accountId: { not: null } }] },
      data: { habitsSince: isAllowed ? new Date() : null },
    });
    if (count === 0) throw new AppError("not-found");
    if (!isAllowed) await transaction.testerHabit.deleteMany({ where: { from: tester } });
  });
}
