import "server-only";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import type { SummaryAccess } from "./summary-access";

export interface SignInRow {
  readonly id: string;
  readonly email: string;
  readonly name: string;
  readonly passwordHash: string;
  readonly sessionVersion: number;
}

export function accountByEmail(email: string): Promise<SignInRow | null> {
  return database().account.findUnique({
    where: { email },
    select: { id: true, email: true, name: true, passwordHash: true, sessionVersion: true },
  });
}

/** Whether a designer gets the daily summary, for whoever has the link of one. */
export async function hasDailySummary({ accountId }: SummaryAccess): Promise<boolean> {
  const row = await database().account.findUnique({ where: { id: accountId }, select: { dailySummary: true } });
  return row?.dailySummary ?? false;
}

/** The address of an account. */
export interface OwnAddress {
  readonly email: string;
  /** Null: nobody has shown yet that the address is theirs. */
  readonly verifiedAt: Date | null;
}

export async function ownAddress({ accountId }: Viewer): Promise<OwnAddress> {
  const { email, emailVerifiedAt } = await database().account.findUniqueOrThrow({
    where: { id: accountId },
    select: { email: true, emailVerifiedAt: true },
  });
  return { email, verifiedAt: emailVerifiedAt };
}
