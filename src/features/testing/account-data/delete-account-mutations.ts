import "server-only";
import type { EmailLinkAccess } from "@/features/accounts/email-links/access";
import { readEmailLink } from "@/features/accounts/email-links/email-link-data";
import { onceOpen } from "@/features/accounts/email-links/use-mutations";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { unsafeTestersToForget } from "../forget/access";
import { forgetTesterIn } from "../forget/forget-in-mutations";
import { ownedBy, runningTests } from "./deletion-data";
import { accountStays } from "./deletion-copy";

/**
 * Deletes the account of whoever is signed in, with all that is theirs.
 *
 * @throws {AppError} "not-allowed" while testers of theirs are at work.
 */
export async function deleteAccount({ accountId }: Viewer): Promise<void> {
  await inTransaction((transaction) => deleteIn(transaction, accountId));
}

/**
 * The same by a link that was mailed to the account's address, once.
 *
 * @returns false if the link cannot be used; see `deleteAccount`.
 */
export async function deleteAccountWithLink(access: EmailLinkAccess): Promise<boolean> {
  const { account } = await readEmailLink(access);
  if (account === null) return false;
  const done = await onceOpen(access, { purpose: "delete_account", account }, async (transaction) => {
    await deleteIn(transaction, account.id);
    return true;
  });
  return done ?? false;
}

async function deleteIn(transaction: Connection, accountId: string): Promise<void> {
  await transaction.$queryRaw`SELECT 1 FROM account WHERE id = ${accountId}::uuid FOR UPDATE`;
  const running = await runningTests(transaction, ownedBy(accountId));
  if (running.length > 0) throw new AppError("not-allowed", accountStays(running));
  await transaction.pattern.deleteMany({ where: ownedBy(accountId) });
  const accepted = { accountId, acceptedAt: { not: null } };
  for (const whose of await unsafeTestersToForget(transaction, accepted)) await forgetTesterIn(transaction, whose);
  await transaction.tester.deleteMany({ where: { accountId } });
  const applications = { accountId };
  await transaction.tester.deleteMany({ where: { application: applications, acceptedAt: null } });
  await transaction.application.deleteMany({ where: applications });
  await transaction.account.delete({ where: { id: accountId } });
}
