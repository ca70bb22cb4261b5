import "server-only";
import { cache } from "react";
import { z } from "zod";
import { patternEditScope, patternScope, reaches, type PatternAccess, type Role } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { type Connection } from "@/server/transaction";
import { AppError } from "@/server/errors";
import type { Proof } from "@/server/proof";
import type { Viewer } from "@/server/viewer";

/** That a person has a part in a call, by her part in its pattern. */
export interface CallAccess extends Proof<"call"> {
  readonly callId: string;
  readonly pattern: PatternAccess;
}

/**
 * Proves that the viewer has a part in a call's pattern.
 *
 * @throws {AppError} "not-found" where the call is absent or none of the viewer's; "not-allowed" where she may only look.
 */
export const callAccess = cache(
  async (viewer: Viewer, callId: string, least: Role): Promise<CallAccess> =>
    await proveCall(database(), { viewer, callId, least }),
);

/** The same inside a transaction, which sees what it has just made itself; see `callAccess`. */
export async function proveCall(
  connection: Connection,
  { viewer, callId, least }: { viewer: Viewer; callId: string; least: Role },
): Promise<CallAccess> {
  if (!z.uuid().safeParse(callId).success) throw new AppError("not-found");
  const { accountId } = viewer;
  const membership = await connection.membership.findFirst({
    where: { accountId, pattern: { calls: { some: { id: callId } } } },
    select: { patternId: true, role: true },
  });
  if (membership === null) throw new AppError("not-found");
  const { patternId, role } = membership;
  if (!reaches(role, least)) throw new AppError("not-allowed");
  return { callId, pattern: { patternId, accountId, role } } as CallAccess;
}

/**
 * The proof of the call's owner, for the worker alone: nobody signed in stands behind it, it acts for her.
 *
 * @returns null where the call is gone.
 */
export async function unsafeOwnerAccess(callId: string): Promise<CallAccess | null> {
  const owner = await database().membership.findFirst({
    where: { role: "owner", pattern: { calls: { some: { id: callId } } } },
    select: { patternId: true, accountId: true, role: true },
  });
  return owner === null ? null : ({ callId, pattern: owner } as CallAccess);
}

/** Where clause of the call that was proved, for reading. */
export function callScope({ callId, pattern }: CallAccess): Prisma.CallWhereUniqueInput {
  return { id: callId, pattern: patternScope(pattern) };
}

/** Where clause of the call that was proved, for writing. */
export function callEditScope({ callId, pattern }: CallAccess): Prisma.CallWhereUniqueInput {
  return { id: callId, pattern: patternEditScope(pattern) };
}

/** Where clause of the call that was proved, for writing into it while it is open. */
export function openCallEditScope(access: CallAccess): Prisma.CallWhereUniqueInput {
  return { ...callEditScope(access), status: "open" };
}
