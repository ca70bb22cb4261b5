import "server-only";
import { z } from "zod";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { isKey } from "@/server/link-key";
import type { Proof } from "@/server/proof";

/** Proof that somebody is a tester of a call, by account or by link. */
export interface TesterAccess extends Proof<"tester"> {
  readonly testerId: string;
  readonly callId: string;
  /** Null if the link gave access. */
  readonly accountId: string | null;
  readonly linkVersion: number;
}

/** Who asks for a tester's pages. */
export interface Asker {
  /** Null: signed in as nobody. */
  readonly accountId: string | null;
  /** Of the tester's link, as their browser keeps it; "" for none. */
  readonly key: string;
}

/** What `proofOf` reads of a tester's row. */
export const PROVED = { id: true, callId: true, accountId: true, linkVersion: true } as const;

type ProvedRow = Prisma.TesterGetPayload<{ select: typeof PROVED }>;

/**
 * Where clause of a tester whose access is still to be proved by `proofOf`. A tester keeps access after stopping and after the
 * call is closed.
 *
 * @throws {AppError} "not-found" for what is no id.
 */
export function unprovedTester(testerId: string): Prisma.TesterWhereInput {
  if (!z.uuid().safeParse(testerId).success) throw new AppError("not-found");
  return { id: testerId, acceptedAt: { not: null } };
}

/** Proves that whoever asks is the tester of a row. @throws {AppError} "not-found" if there is none, or it is somebody else. */
export function proofOf(row: ProvedRow | null, { accountId, key }: Asker): TesterAccess {
  if (row === null) throw new AppError("not-found");
  const { id: testerId, callId, linkVersion } = row;
  if (row.accountId !== null && accountId === row.accountId)
    return { testerId, callId, accountId, linkVersion } as TesterAccess;
  // Once a tester has an account, only signing in gives access.
  if (row.accountId !== null || !isKey(key, "tester", { id: testerId, version: linkVersion }))
    throw new AppError("not-found");
  return { testerId, callId, accountId: null, linkVersion } as TesterAccess;
}

/**
 * Proves that whoever asks is this tester.
 *
 * @throws {AppError} "not-found" if there is no such tester, it is somebody else, or the invitation has not been accepted.
 */
export async function testerProof(testerId: string, asker: Asker): Promise<TesterAccess> {
  const row = await database().tester.findFirst({ where: unprovedTester(testerId), select: PROVED });
  return proofOf(row, asker);
}

/** Where clause of the tester that was proved. */
export function testerScope({ testerId, callId, accountId, linkVersion }: TesterAccess): Prisma.TesterWhereUniqueInput {
  return { id: testerId, callId, acceptedAt: { not: null }, accountId, ...(accountId === null ? { linkVersion } : {}) };
}

/** Where clause of the tester that was proved, for writing while the call is open. */
export function openTesterScope(access: TesterAccess): Prisma.TesterWhereUniqueInput {
  return { ...testerScope(access), call: { status: "open" } };
}
