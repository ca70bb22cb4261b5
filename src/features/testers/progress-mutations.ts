import "server-only";
import { randomUUID } from "node:crypto";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import { latestRevision } from "@/features/patterns/data";
import { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { checkPlaces, freeCodes, takesPlace } from "./mutations";
import type { NewTester } from "./schema";

/** Keeps what the designer notes about a tester. */
export async function noteTester(access: CallAccess, testerId: string, note: string): Promise<void> {
  const { count } = await database().tester.updateMany({
    where: { id: testerId, call: callEditScope(access) },
    data: { note },
  });
  if (count === 0) throw new AppError("not-found");
}

/** Makes a tester's link void, with browsers that it let in; her new one is told by `invitationLink`. */
export async function renewLink(access: CallAccess, testerId: string): Promise<void> {
  const { count } = await database().tester.updateMany({
    where: { id: testerId, call: callEditScope(access), invitedAt: { not: null }, contact: { isNot: null } },
    data: { linkVersion: { increment: 1 } },
  });
  if (count === 0) throw new AppError("not-found");
}

/** Takes back an invitation that was not answered. @throws {AppError} "changed-meanwhile" where it was. */
export async function withdrawInvited(access: CallAccess, testerId: string): Promise<void> {
  const { count } = await database().tester.updateMany({
    where: {
      ...{ id: testerId, call: callEditScope(access), invitedAt: { not: null } },
      ...{ acceptedAt: null, declinedAt: null, withdrawnAt: null },
    },
    data: { withdrawnAt: new Date() },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "She has answered meanwhile: reload to see what.");
}

/**
 * Puts off the end of an invitation. One that was declined or withdrawn stands again, with a new link; one that takes no
 * place any more needs a free one.
 *
 * @throws {AppError} "closed"; "no-place"; "changed-meanwhile" where it was accepted.
 */
export async function inviteLonger(access: CallAccess, testerId: string, endsAt: Date): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const where = { id: testerId, call: openCallEditScope(access), invitedAt: { not: null }, acceptedAt: null };
    const tester = await transaction.tester.findFirst({
      where,
      select: { size: true, applicationId: true, declinedAt: true, withdrawnAt: true },
    });
    if (tester === null) throw new AppError("changed-meanwhile", "She has accepted meanwhile: reload to see.");
    const stands = await transaction.tester.count({ where: { ...where, AND: takesPlace(new Date()) } });
    if (stands === 0 && tester.applicationId !== null) await checkPlaces(transaction, access, [tester.size]);
    const again = tester.declinedAt !== null || tester.withdrawnAt !== null;
    await transaction.tester.updateMany({
      where,
      data: {
        ...{ invitationEndsAt: endsAt, declinedAt: null, withdrawnAt: null },
        ...(again ? { linkVersion: { increment: 1 } } : {}),
      },
    });
  });
}

interface ByHand extends NewTester {
  readonly endsAt: Date;
  /** The designer tests that size herself: nothing is to be accepted. */
  readonly self: Viewer | null;
}

/**
 * Invites somebody who has not applied, whatever places there are.
 *
 * @returns her id.
 * @throws {AppError} "closed"; "not-allowed" where the designer is a tester of this call already.
 */
export async function inviteByHand(
  access: CallAccess,
  { name, email, size, endsAt, self }: ByHand,
): Promise<{ testerId: string }> {
  const { revisionId } = await latestRevision(access.pattern);
  const testerId = randomUUID();
  const now = new Date();
  try {
    await inTransaction(async (transaction) => {
      await lockOpenCall(transaction, access);
      const codes = await freeCodes(transaction, access);
      await transaction.tester.create({
        data: {
          ...{ id: testerId, callId: access.callId, revisionId, size, invitedAt: now, invitationEndsAt: endsAt },
          ...codes.next(),
          ...(self === null ? {} : { accountId: self.accountId, acceptedAt: now, unit: self.unit }),
          contact: { create: { name, email } },
        },
      });
    });
  } catch (error) {
    if (error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2002")
      throw new AppError("not-allowed", "You are a tester of this call already.");
    throw error;
  }
  return { testerId };
}

/**
 * Closes a call: nobody applies, accepts or sends any more. What is being sent at that moment is in before, or told.
 *
 * @throws {AppError} "changed-meanwhile" where it is closed already.
 */
export async function closeCall(access: CallAccess): Promise<void> {
  const { count } = await database().call.updateMany({
    where: openCallEditScope(access),
    data: { status: "closed", closedAt: new Date() },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This call is closed already.");
}

/** Opens a closed call again. */
export async function reopenCall(access: CallAccess): Promise<void> {
  const { count } = await database().call.updateMany({
    where: { ...callEditScope(access), status: "closed" },
    data: { status: "open", closedAt: null },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This call is open already.");
}
