import "server-only";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";

/** Whose data is to be deleted; where clause by the proof of whoever acts. */
export interface TesterToForget {
  readonly testerId: string;
  readonly callId: string;
  readonly tester: Prisma.TesterWhereUniqueInput;
}

/**
 * Testers whose data is to be deleted where none of them acts: when an account is deleted, and for the worker.
 *
 * @param where of an account that its person deletes, or of a call whose time is over.
 */
export async function unsafeTestersToForget(
  connection: Connection,
  where: Prisma.TesterWhereInput,
): Promise<TesterToForget[]> {
  const rows = await connection.tester.findMany({
    where,
    // Calls are locked in one order, an earlier one before those that follow it.
    orderBy: [{ call: { createdAt: "asc" } }, { callId: "asc" }, { id: "asc" }],
    select: { id: true, callId: true, accountId: true },
  });
  return rows.map(({ id, callId, accountId }) => ({ testerId: id, callId, tester: { id, callId, accountId } }));
}
