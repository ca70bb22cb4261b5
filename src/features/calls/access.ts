import "server-only";
import { cache } from "react";
import { z } from "zod";
import {
  patternEditScope,
  patternScope,
  patternProof,
  type PatternAccess,
  type Role,
} from "@/features/patterns/access";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { type Connection } from "@/server/transaction";
import { AppError } from "@/server/errors";
import type { Proof } from "@/server/proof";
import type { Viewer } from "@/server/viewer";

/** A person's role in a call, from their role in its pattern. */
export interface CallAccess extends Proof<"call"> {
  readonly callId: string;
  readonly pattern: PatternAccess;
}

/**
 * Proves that the viewer has a role in a call's pattern.
 *
 * @throws {AppError} "not-found" where the call does not exist or is not the viewer's; "not-allowed" where they may only view.
 */
export const callAccess = cache(
  async (viewer: Viewer, callId: string, least: Role): Promise<CallAccess> =>
    await proveCall(database(), { viewer, callId, least }),
);

/** The same inside a transaction, which sees its own writes; see `callAccess`. */
export async function proveCall(
  connection: Connection,
  { viewer, callId, least }: { viewer: Viewer; callId: string; least: Role },
): Promise<CallAccess> {
  refuseUnlessId(callId);
  const membership = await connection.membership.findFirst({
    where: { accountId: viewer.accountId, pattern: { calls: { some: { id: callId } } } },
    select: { patternId: true, accountId: true, role: true },
  });
  return callProof(callId, { membership, least });
}

/** What is no id is no call's, and PostgreSQL would not compare it. @throws {AppError} "not-found" */
export function refuseUnlessId(callId: string): void {
  if (!z.uuid().safeParse(callId).success) throw new AppError("not-found");
}

/** The access to a call that a role in its pattern gives; see `callAccess`. */
export function callProof(
  callId: string,
  { membership, least }: { readonly membership: Parameters<typeof patternProof>[0]; readonly least: Role },
): CallAccess {
  return { callId, pattern: patternProof(membership, least) } as CallAccess;
}

/**
 * The access of the call's owner, for the worker only, which acts for them without a signed-in person.
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

/** The calls whose reports count in the results of one, the nearest first; of the same pattern, and so for the same people. */
export async function countedCalls(
  { callId, pattern }: CallAccess,
  connection: Connection = database(),
): Promise<CallAccess[]> {
  const found: CallAccess[] = [];
  for (let id = callId; ;) {
    const { follows } =
      (await connection.call.findFirst({
        where: { id, countsEarlier: true, pattern: patternScope(pattern), follows: { pattern: patternScope(pattern) } },
        select: { follows: { select: { id: true } } },
      })) ?? {};
    if (follows == null || found.some((call) => call.callId === follows.id)) return found;
    found.push({ callId: follows.id, pattern } as CallAccess);
    id = follows.id;
  }
}

/** More of them would hardly raise what is known of the next (docs/method.md#what-earlier-calls-teach). */
const MAX_TAUGHT_BY = 12;

/**
 * The calls that teach one what to expect: of each other pattern that the same designer owns the first that had reports, the
 * newest patterns first. None of them is made up for the demo, and none teaches a call that is.
 *
 * @param before reports since then do not count.
 */
export async function teachingCalls(
  { pattern: { patternId, accountId } }: CallAccess,
  { before, connection }: { readonly before: Date; readonly connection: Connection },
): Promise<CallAccess[]> {
  const owner = { accountId, role: "owner" } as const;
  const taught = { id: patternId, isDemo: false, memberships: { some: owner } };
  if ((await connection.pattern.count({ where: taught })) === 0) return [];
  const reported = { testers: { some: { reports: { some: { createdAt: { lt: before } } } } } };
  const patterns = await connection.pattern.findMany({
    where: { id: { not: patternId }, isDemo: false, memberships: { some: owner }, calls: { some: reported } },
    orderBy: [{ createdAt: "desc" }, { id: "asc" }],
    take: MAX_TAUGHT_BY,
    select: {
      id: true,
      calls: { where: reported, orderBy: [{ createdAt: "asc" }, { id: "asc" }], take: 1, select: { id: true } },
    },
  });
  return patterns.flatMap(({ id, calls }) =>
    calls.map((call) => ({ callId: call.id, pattern: { patternId: id, ...owner } }) as CallAccess),
  );
}

/** Where clause of the call that was proved, for reading. */
export function callScope({ callId, pattern }: CallAccess): Prisma.CallWhereUniqueInput {
  return { id: callId, pattern: patternScope(pattern) };
}

/** The same as a condition of an SQL query, which says itself which rows of the call it reads. */
export function callScopeSql({ callId, pattern }: CallAccess): Prisma.Sql {
  return Prisma.sql`EXISTS (
    SELECT FROM call JOIN membership USING (pattern_id)
    WHERE call.id = ${callId}::uuid AND account_id = ${pattern.accountId}::uuid)`;
}

/** Where clause of the call that was proved, for writing. */
export function callEditScope({ callId, pattern }: CallAccess): Prisma.CallWhereUniqueInput {
  return { id: callId, pattern: patternEditScope(pattern) };
}

/** Where clause of the call that was proved, for writing into it while it is open. */
export function openCallEditScope(access: CallAccess): Prisma.CallWhereUniqueInput {
  return { ...callEditScope(access), status: "open" };
}
