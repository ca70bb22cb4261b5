import "server-only";
import { holdOpenCall } from "@/features/calls/mutations";
import { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { invitedScope, type InvitedAccess } from "@/features/recruiting/invitations/access";
import { writeDeclined } from "@/features/recruiting/invitations/declined-mutations";
import { acceptedContent } from "./accepted-copy";
import { testerScope, type TesterAccess } from "../home/access";
import { agreementAsked, agreementColumns, isPlaceGone } from "./invited-data";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import type { AcceptedChoices } from "../home/schema";

interface Acceptance extends Omit<AcceptedChoices, "agreed" | "wearer"> {
  /** The account that accepts; null if only the link will give access. */
  readonly viewer: Viewer | null;
  /** The version of the agreement that they agree to; null for none. */
  readonly agreed?: number | null;
  /** Asked of those who did not apply; left as it is where it is left out. */
  readonly wearer?: AcceptedChoices["wearer"];
}

/**
 * Accepts an invitation, once.
 *
 * @returns true if this call accepted it; false if it cannot be accepted or was before: its page says which.
 * @throws {AppError} "not-allowed" if the account is already a tester of this call, or they have not agreed to what they have
 *   to; "changed-meanwhile" if that is a newer agreement by now.
 */
export async function acceptInvited(
  access: InvitedAccess,
  { viewer, unit, terms, timeZone, agreed = null, wearer }: Acceptance,
): Promise<boolean> {
  return await inTransaction(async (transaction) => {
    if (!(await holdOpenCall(transaction, invitedCall(access)))) return false;
    const tester = await transaction.tester.findUnique({
      where: invitedScope(access),
      select: { size: true, applicationId: true, call: { select: agreementColumns } },
    });
    if (tester === null || (await isPlaceGone(transaction, access, tester))) return false;
    const agreement = agreementAsked(tester);
    if (agreement !== null && agreed !== agreement.version) throw notAgreed(agreed);
    const agreeing = agreement === null ? {} : { agreementVersion: agreement.version, agreedAt: new Date() };
    const isAccepted = await once(
      transaction.tester.updateMany({
        where: { ...unanswered(access), ...takenBy(viewer) },
        data: {
          ...{ acceptedAt: new Date(), unit, terms, timeZone, ...agreeing },
          ...(tester.applicationId === null && wearer !== undefined ? { isWornByChild: wearer === "child" } : {}),
          ...(viewer ? { accountId: viewer.accountId } : {}),
        },
      }),
    );
    if (isAccepted)
      await writeChangeable(transaction, {
        ...{ kind: "place-accepted", changedAs: "place-accepted", testers: invitedScope(access) },
        content: acceptedContent,
      });
    return isAccepted;
  });
}

function notAgreed(agreed: number | null): AppError {
  return agreed === null
    ? new AppError("not-allowed", "To accept, tick that you agree to what this test asks of you.")
    : new AppError("changed-meanwhile", "The agreement has changed. Reload the page and read it again.");
}

/** Declines an invitation, once; see `acceptInvited`. */
export async function declineInvited(access: InvitedAccess, viewer: Viewer | null): Promise<boolean> {
  return await inTransaction(async (transaction) => {
    if (!(await holdOpenCall(transaction, invitedCall(access)))) return false;
    const isDeclined = await once(
      transaction.tester.updateMany({
        where: { ...unanswered(access), ...takenBy(viewer) },
        data: { declinedAt: new Date() },
      }),
    );
    if (isDeclined) await writeDeclined(transaction, invitedScope(access));
    return isDeclined;
  });
}

/**
 * Links a test that was accepted without an account to the viewer's account: from then on only signing in gives access.
 *
 * @returns false if it has an account by now.
 * @throws {AppError} "not-allowed" if the account is already a tester of this call.
 */
export async function bindToAccount(access: InvitedAccess, viewer: Viewer): Promise<boolean> {
  return await bind(invitedScope(access), viewer);
}

/** The same for a tester who has access by link already; see `bindToAccount`. */
export async function bindOwnTest(access: TesterAccess, viewer: Viewer): Promise<boolean> {
  return await bind(testerScope(access), viewer);
}

async function bind(tester: Prisma.TesterWhereInput, { accountId }: Viewer): Promise<boolean> {
  return await inTransaction((transaction) =>
    once(
      transaction.tester.updateMany({
        where: { ...tester, acceptedAt: { not: null }, accountId: null },
        data: { accountId },
      }),
    ),
  );
}

/** Where clause of the call that this invitation is for. */
function invitedCall(access: InvitedAccess): Prisma.CallWhereInput {
  return { id: access.callId, testers: { some: invitedScope(access) } };
}

function unanswered(access: InvitedAccess): Prisma.TesterWhereInput {
  return {
    ...invitedScope(access),
    ...{ acceptedAt: null, declinedAt: null, withdrawnAt: null },
    invitationExpiresAt: { gt: new Date() },
  };
}

/** Those who applied with an account answer with it; all others with any account or none. */
function takenBy(viewer: Viewer | null): Prisma.TesterWhereInput {
  return { OR: [{ accountId: null }, ...(viewer ? [{ accountId: viewer.accountId }] : [])] };
}

async function once(write: Promise<{ count: number }>): Promise<boolean> {
  try {
    return (await write).count === 1;
  } catch (error) {
    if (error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2002")
      throw new AppError(
        "not-allowed",
        "With this account you are already a tester in this test. Continue without it, or sign in with another account.",
      );
    throw error;
  }
}
