import "server-only";
import { database } from "@/server/database";
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
