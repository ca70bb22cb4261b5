import "server-only";
import { randomUUID } from "node:crypto";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall, refuseArchived } from "@/features/calls/mutations";
import { latestRevision } from "@/features/patterns/data";
import { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { checkMostTesters, freeCodes } from "@/features/recruiting/invitations/mutations";
import { offerWithdrawnContent } from "@/features/recruiting/invitations/offer-computed";
import { writeOffers } from "@/features/recruiting/invitations/offer-mail-mutations";
import { takesPlace } from "@/features/calls/tester-status-data";
import type { NewTester } from "../home/schema";
import { writeChangeable } from "../messages/changeable-mail-mutations";

/** Stores the designer's note about a tester. */
export async function noteTester(access: CallAccess, testerId: string, note: string): Promise<void> {
  const { count } = await database().tester.updateMany({
    where: { id: testerId, call: callEditScope(access) },
    data: { note },
  });
  if (count === 0) throw new AppError("not-found");
}

/** Revokes a tester's link, also for browsers that used it; `invitationLink` gives the new one. */
export async function renewLink(access: CallAccess, testerId: string): Promise<void> {
  const { count } = await database().tester.updateMany({
    where: { id: testerId, call: callEditScope(access), invitedAt: { not: null }, contact: { isNot: null } },
    data: { linkVersion: { increment: 1 } },
  });
  if (count === 0) throw new AppError("not-found");
}

/**
 * Lets a tester who can no longer sign in open their test by a new link: the test leaves their account, to which it can go
 * back from that link. Their account and their other tests stay as they are.
 *
 * @throws {AppError} "not-found" if the test has no account.
 */
export async function openByLinkAgain(access: CallAccess, testerId: string): Promise<void> {
  const { count } = await database().tester.updateMany({
    where: {
      ...{ id: testerId, call: callEditScope(access), contact: { isNot: null } },
      ...{ invitedAt: { not: null }, acceptedAt: { not: null }, accountId: { not: null } },
    },
    data: { accountId: null, linkVersion: { increment: 1 } },
  });
  if (count === 0) throw new AppError("not-found");
}

/** Withdraws an unanswered invitation. @throws {AppError} "changed-meanwhile" if it was answered. */
export async function withdrawInvited(access: CallAccess, testerId: string): Promise<void> {
  const invited = { id: testerId, call: callEditScope(access), invitedAt: { not: null } };
  await inTransaction(async (transaction) => {
    const { count } = await transaction.tester.updateMany({
      where: { ...invited, acceptedAt: null, declinedAt: null, withdrawnAt: null },
      data: { withdrawnAt: new Date() },
    });
    if (count === 0) throw new AppError("changed-meanwhile", ANSWERED);
    await writeChangeable(transaction, {
      ...{ kind: "place-released", changedAs: "offer-withdrawn", testers: invited },
      content: offerWithdrawnContent,
    });
  });
}

const ANSWERED = "They have answered in the meantime. Reload the page to see their answer.";

/**
 * Extends an invitation's deadline. One that was declined or withdrawn becomes valid again, with a new link; one that no
 * longer occupies a spot counts towards the most testers of its size.
 *
 * @throws {AppError} "closed"; "no-place"; "changed-meanwhile" if it was accepted.
 */
export async function inviteLonger(access: CallAccess, testerId: string, expiresAt: Date): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const where = { id: testerId, call: openCallEditScope(access), invitedAt: { not: null }, acceptedAt: null };
    const tester = await transaction.tester.findFirst({
      where,
      select: { size: true, declinedAt: true, withdrawnAt: true },
    });
    if (tester === null)
      throw new AppError("changed-meanwhile", "They have accepted in the meantime. Reload the page to see it.");
    const occupied = await transaction.tester.count({ where: { ...where, AND: takesPlace(new Date()) } });
    if (occupied === 0) await checkMostTesters(transaction, { call: callEditScope(access), sizes: [tester.size] });
    const again = tester.declinedAt !== null || tester.withdrawnAt !== null;
    await transaction.tester.updateMany({
      where,
      data: {
        ...{ invitationExpiresAt: expiresAt, declinedAt: null, withdrawnAt: null },
        ...(again ? { linkVersion: { increment: 1 } } : {}),
      },
    });
    await writeOffers(transaction, where);
  });
}

interface ByHand extends NewTester {
  readonly expiresAt: Date;
  /** Set if the designer tests this size: nothing needs to be accepted. */
  readonly self: Viewer | null;
}

/**
 * Invites somebody who has not applied, up to the most testers of the size.
 *
 * @returns the tester's id.
 * @throws {AppError} "closed"; "no-place" for a size with the most testers; "not-allowed" if the designer is already a tester of this call.
 */
export async function inviteByHand(
  access: CallAccess,
  { name, email, size, expiresAt, self }: ByHand,
): Promise<{ testerId: string }> {
  const { revisionId } = await latestRevision(access.pattern);
  const testerId = randomUUID();
  const now = new Date();
  try {
    await inTransaction(async (transaction) => {
      await lockOpenCall(transaction, access);
      await checkMostTesters(transaction, { call: callEditScope(access), sizes: [size] });
      const codes = await freeCodes(transaction, access);
      await transaction.tester.create({
        data: {
          ...{ id: testerId, callId: access.callId, revisionId, size, invitedAt: now, invitationExpiresAt: expiresAt },
          ...codes.next(),
          ...(self === null ? {} : { accountId: self.accountId, acceptedAt: now, unit: self.unit }),
          contact: { create: { name, email } },
        },
      });
      if (self !== null) return;
      const testers = { id: testerId, call: callEditScope(access) };
      await writeOffers(transaction, testers);
    });
  } catch (error) {
    if (error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2002")
      throw new AppError("not-allowed", "You are already a tester in this test.");
    throw error;
  }
  return { testerId };
}

/**
 * Closes a call: nobody can apply, accept or send any more. Whatever is being sent at that moment is stored before, or refused.
 *
 * @throws {AppError} "changed-meanwhile" if it is already closed.
 */
export async function closeCall(access: CallAccess): Promise<void> {
  const { count } = await database().call.updateMany({
    where: openCallEditScope(access),
    data: { status: "closed", closedAt: new Date() },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This test is already closed.");
}

/** Opens a closed call again, unless it or its pattern is archived. */
export async function reopenCall(access: CallAccess): Promise<void> {
  await refuseArchived(database(), { calls: { some: callEditScope(access) } });
  const { count } = await database().call.updateMany({
    where: { ...callEditScope(access), status: "closed", archivedAt: null },
    data: { status: "open", closedAt: null },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This test is already open, or archived.");
}
