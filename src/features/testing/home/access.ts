import "server-only";
import { cookies } from "next/headers";
import { cache } from "react";
import { z } from "zod";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { isKey } from "@/server/link-key";
import type { Proof } from "@/server/proof";
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

/** Where clause of the tester that was proved. */
export function testerScope({ testerId, callId, accountId, linkVersion }: TesterAccess): Prisma.TesterWhereUniqueInput {
  return { id: testerId, callId, acceptedAt: { not: null }, accountId, ...(accountId === null ? { linkVersion } : {}) };
}

/** Where clause of the tester that was proved, for writing while the call is open. */
export function openTesterScope(access: TesterAccess): Prisma.TesterWhereUniqueInput {
  return { ...testerScope(access), call: { status: "open" } };
}
