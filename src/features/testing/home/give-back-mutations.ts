import "server-only";
import { checkMostTesters } from "@/features/recruiting/invitations/mutations";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";

interface Stopped {
  /** Where clause of the tester, by the proof of whoever acts and by how their test ended. */
  readonly tester: Prisma.TesterWhereInput;
  readonly call: Prisma.CallWhereInput;
  /** Said where their size has the most testers; left out: what a designer reads. */
  readonly refusal?: string;
}

/**
 * Gives a stopped tester their test back, whoever ended it, as long as their size may have one more.
 *
 * @param connection a transaction in which the call's row is locked.
 * @returns false where there is no such tester, or they go on already.
 * @throws {AppError} "no-place" where their size has the most testers.
 */
export async function giveTestBack(connection: Connection, { tester, call, refusal }: Stopped): Promise<boolean> {
  const where = { ...tester, stoppedAt: { not: null } };
  const row = await connection.tester.findFirst({ where, select: { size: true } });
  if (row === null) return false;
  await checkMostTesters(connection, { call, sizes: [row.size], refusal });
  await connection.tester.updateMany({ where, data: { stoppedAt: null, freedAt: null, stoppedByDesigner: false } });
  return true;
}
