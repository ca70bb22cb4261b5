import "server-only";
import { AppError } from "@/server/errors";
import type { SessionOwner } from "@/server/session";
import { inTransaction, type Connection } from "@/server/transaction";
import { createNewAccount } from "../mutations";
import { hashPassword } from "../password";
import type { EmailLinkAccess } from "./access";
import { writeToAddress } from "./ask-mutations";
import { readEmailLink, type EmailLinkRead } from "./email-link-data";

interface SignIn {
  /** The signed-in person, if any: they need no new password to confirm the address of their own account. */
  readonly viewerId: string | null;
  readonly newPassword?: string;
}

/**
 * Signs in by a mailed link, once, and confirms the account's address. A new password ends every session.
 *
 * @returns whose session starts; null if the link cannot be used, or not without a new password.
 */
export async function signInWithLink(
  access: EmailLinkAccess,
  { viewerId, newPassword }: SignIn,
): Promise<SessionOwner | null> {
  const { account } = await readEmailLink(access);
  if (account === null) return null;
  const isOpenTo = account.isProven || account.id === viewerId;
  // Whoever made an account with an address that was never confirmed may know its password.
  if (newPassword === undefined && !isOpenTo) return null;
  const passwordHash = newPassword === undefined ? null : await hashPassword(newPassword);
  return await onceOpen(access, { purpose: "sign_in", account }, async (transaction) => {
    const [used] = await transaction.account.updateManyAndReturn({
      where: { id: account.id, sessionVersion: account.sessionVersion },
      data: passwordHash === null ? {} : { passwordHash, sessionVersion: { increment: 1 } },
      select: { id: true, name: true, sessionVersion: true },
    });
    if (used === undefined) throw new AppError("changed-meanwhile");
    await transaction.account.updateMany({
      where: { id: used.id, emailVerifiedAt: null },
      data: { emailVerifiedAt: new Date() },
    });
    return { accountId: used.id, name: used.name, sessionVersion: used.sessionVersion };
  });
}

/**
 * Creates the account for which a link was mailed, once.
 *
 * @returns whose session starts; null if the link cannot be used, or the address has an account by now.
 */
export async function signUpWithLink(
  access: EmailLinkAccess,
  { name, password }: { readonly name: string; readonly password: string },
): Promise<SessionOwner | null> {
  const { account, address } = await readEmailLink(access);
  if (account !== null) return null;
  return await onceOpen(access, { purpose: "sign_in", account }, async (transaction) => {
    const made = await createNewAccount(transaction, { name, password, email: address, emailVerifiedAt: new Date() });
    return made === null ? null : { ...made, name };
  });
}

/**
 * Gives the account of a link the address that the link was mailed to, once. The old address is told, and links that were
 * mailed to it sign in no more.
 *
 * @returns whose account it is; null if the link cannot be used.
 * @throws {AppError} "changed-meanwhile" if the address has an account by now.
 */
export async function changeAddressWithLink(access: EmailLinkAccess): Promise<{ readonly accountId: string } | null> {
  const { account, address } = await readEmailLink(access);
  if (account === null) return null;
  return await onceOpen(access, { purpose: "change_address", account }, async (transaction) => {
    const where = { id: account.id, sessionVersion: account.sessionVersion };
    const before = await transaction.account.findUnique({ where, select: ADDRESSED });
    if (before === null || (await transaction.account.count({ where: { email: address } })) > 0)
      throw new AppError("changed-meanwhile", TAKEN);
    const now = new Date();
    await transaction.account.update({ where, data: { email: address, emailVerifiedAt: now } });
    await transaction.emailLink.updateMany({
      where: { accountId: account.id, address: before.email, usedAt: null, replacedAt: null },
      data: { replacedAt: now },
    });
    await writeToAddress(transaction, { kind: "address-changed", address: before.email, account: before });
    return { accountId: account.id };
  });
}

const ADDRESSED = { id: true, email: true, name: true, sessionVersion: true, emailVerifiedAt: true } as const;
const TAKEN = "This address has an account by now, so nothing was changed.";

interface Opened {
  readonly purpose: EmailLinkRead["purpose"];
  readonly account: EmailLinkRead["account"];
}

/** Marks a link as used, if it can be for this, and does what it is for in the same transaction. */
export async function onceOpen<Done>(
  { emailLinkId }: EmailLinkAccess,
  { purpose, account }: Opened,
  run: (connection: Connection) => Promise<Done>,
): Promise<Done | null> {
  return await inTransaction(async (transaction) => {
    const now = new Date();
    const { count } = await transaction.emailLink.updateMany({
      where: {
        ...{ id: emailLinkId, purpose, usedAt: null, replacedAt: null, expiresAt: { gt: now } },
        ...{ accountId: account?.id ?? null, sessionVersion: account?.sessionVersion ?? null },
      },
      data: { usedAt: now },
    });
    return count === 0 ? null : await run(transaction);
  });
}
