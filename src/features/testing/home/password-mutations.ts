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
 * Creates an account for a tester with link access, and links the test to it: browsers that used the link lose access, and
 * the link asks for the account.
 *
 * @returns the owner of the new session; null if the address already has an account: then nothing changes.
 * @throws {AppError} "not-found" if the test has an account by now.
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
      data: { accountId: made.accountId },
    });
    if (count === 0) throw new AppError("not-found");
    return { ...made, name };
  });
}
