import "server-only";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { AppError } from "@/server/errors";
import { hashPassword } from "./password";
import type { SummaryAccess } from "./summary-access";

interface NewAccount {
  readonly email: string;
  readonly name: string;
  readonly password: string;
  /** Left out: nobody has shown yet that the address is theirs. */
  readonly emailVerifiedAt?: Date;
}

interface NewPassword {
  readonly accountId: string;
  /** The session version of the request. */
  readonly sessionVersion: number;
  readonly password: string;
}

/** Creates an account; an existing one stays as it is, and the caller does not learn of it. */
export async function createAccount({ email, name, password }: NewAccount): Promise<void> {
  const passwordHash = await hashPassword(password);
  await database().account.createMany({ data: { email, name, passwordHash }, skipDuplicates: true });
}

/**
 * Creates an account inside a transaction.
 *
 * @returns what a session of it needs; null where the address has an account already, which stays as it is.
 */
export async function createNewAccount(
  connection: Connection,
  { password, ...person }: NewAccount,
): Promise<{ readonly accountId: string; readonly sessionVersion: number } | null> {
  const passwordHash = await hashPassword(password);
  const [made] = await connection.account.createManyAndReturn({
    data: [{ ...person, passwordHash }],
    skipDuplicates: true,
    select: { id: true, sessionVersion: true },
  });
  return made === undefined ? null : { accountId: made.id, sessionVersion: made.sessionVersion };
}

export async function changeAbout(accountId: string, about: { name: string; unit: "cm" | "in" }): Promise<void> {
  await database().account.update({ where: { id: accountId }, data: about });
}

/**
 * Sets a new password and ends every session.
 *
 * @returns the session version from now on.
 * @throws {AppError} "signed-out" when the sessions were ended meanwhile.
 */
export async function changePassword({ accountId, sessionVersion, password }: NewPassword): Promise<number> {
  const passwordHash = await hashPassword(password);
  const [changed] = await database().account.updateManyAndReturn({
    where: { id: accountId, sessionVersion },
    data: { passwordHash, sessionVersion: { increment: 1 } },
    select: { sessionVersion: true },
  });
  if (changed === undefined) throw new AppError("signed-out");
  return changed.sessionVersion;
}

/** Ends every session of an account. */
export async function endAllSessions(accountId: string): Promise<void> {
  await database().account.update({ where: { id: accountId }, data: { sessionVersion: { increment: 1 } } });
}

/** Whether a designer gets the daily summary, for whoever has the link of one. */
export async function storeDailySummary({ accountId }: SummaryAccess, dailySummary: boolean): Promise<void> {
  await database().account.updateMany({ where: { id: accountId }, data: { dailySummary } });
}
