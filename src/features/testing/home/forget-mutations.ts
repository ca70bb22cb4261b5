import "server-only";
import { inTransaction } from "@/server/transaction";
import { forgetTesterIn } from "../forget/forget-in-mutations";
import { testerScope, type TesterAccess } from "./access";

/**
 * Deletes a tester's name, body measurements and words for good; see `forgetTesterIn`.
 *
 * @throws {AppError} "not-found" if this is no longer the tester's row.
 */
export async function forgetTester(access: TesterAccess): Promise<void> {
  await inTransaction((transaction) => forgetTesterIn(transaction, { ...access, tester: testerScope(access) }));
}
