import "server-only";
import { createNewAccount } from "@/features/accounts/mutations";
import { AppError } from "@/server/errors";
import type { SessionOwner } from "@/server/session";
import { inTransaction } from "@/server/transaction";
import { testerScope, type TesterAccess } from "./access";

interface Account {
  readonly name: string;
  readonly email: string;
  readonly password: string;
}

/**
 * Makes an account for a tester whom her link let in, and gives her test to it: her link, and browsers that it let in, are
 * void from then on.
 *
 * @returns what to sign her in with; null where the address has an account already: nothing is changed then.
 * @throws {AppError} "not-found" where her test has an account by now.
 */
export async function setTesterPassword(
  access: TesterAccess,
  { name, email, password }: Account,
): Promise<SessionOwner | null> {
  return await inTransaction(async (transaction) => {
    const made = await createNewAccount(transaction, { name, email, password });
    if (made === null) return null;
    const { count } = await transaction.tester.updateMany({
      where: { ...testerScope(access), accountId: null },
      data: { accountId: made.accountId, linkVersion: { increment: 1 } },
    });
    if (count === 0) throw new AppError("not-found");
    return { ...made, name };
  });
}
