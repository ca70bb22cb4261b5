import "server-only";
import { cookies } from "next/headers";
import { cache } from "react";
import { z } from "zod";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { isKey } from "@/server/link-key";
import type { Proof } from "@/server/proof";
import type { Connection } from "@/server/transaction";
import { optionalViewer } from "@/server/viewer";
import { testerCookieName } from "./tester-cookie-name";

/** Proof that somebody is a tester of a call, by account or by link. */
export interface TesterAccess extends Proof<"tester"> {
  readonly testerId: string;
  readonly callId: string;
  /** Null if the link gave access. */
  readonly accountId: string | null;
  readonly linkVersion: number;
}

/**
 * Proves that the request comes from this tester. A tester keeps access after stopping and after the call is closed.
 *
 * @throws {AppError} "not-found" if there is no such tester, it is somebody else, or the invitation has not been accepted.
 */
export const testerAccess = cache(async (testerId: string): Promise<TesterAccess> => {
  if (!z.uuid().safeParse(testerId).success) throw new AppError("not-found");
  const row = await database().tester.findFirst({
    where: { id: testerId, acceptedAt: { not: null } },
    select: { id: true, callId: true, accountId: true, linkVersion: true },
  });
  if (row === null) throw new AppError("not-found");
  const { callId, linkVersion } = row;
  const viewer = await optionalViewer();
  if (row.accountId !== null && viewer?.accountId === row.accountId)
    return { testerId, callId, accountId: row.accountId, linkVersion } as TesterAccess;
  const key = (await cookies()).get(testerCookieName(testerId))?.value ?? "";
  // Once a tester has an account, only signing in gives access.
  if (row.accountId !== null || !isKey(key, "tester", { id: testerId, version: linkVersion }))
    throw new AppError("not-found");
  return { testerId, callId, accountId: null, linkVersion } as TesterAccess;
});

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
    // Calls are locked in one order.
    orderBy: [{ callId: "asc" }, { id: "asc" }],
    select: { id: true, callId: true, accountId: true },
  });
  return rows.map(({ id, callId, accountId }) => ({ testerId: id, callId, tester: { id, callId, accountId } }));
}

/** Where clause of the tester that was proved. */
export function testerScope({ testerId, callId, accountId, linkVersion }: TesterAccess): Prisma.TesterWhereUniqueInput {
  return { id: testerId, callId, acceptedAt: { not: null }, accountId, ...(accountId === null ? { linkVersion } : {}) };
}

/** Where clause of the tester that was proved, for writing while the call is open. */
export function openTesterScope(access: TesterAccess): Prisma.TesterWhereUniqueInput {
  return { ...testerScope(access), call: { status: "open" } };
}
