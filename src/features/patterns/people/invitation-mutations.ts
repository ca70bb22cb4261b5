import "server-only";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { patternOwnerScope, type HelperRole, type InvitationAccess, type PatternAccess, type Role } from "../access";
import { hashToken, makeToken } from "./invitation-token";

const DAYS_OPEN = 14;
const DAY_MS = 24 * 60 * 60 * 1000;

/** The roles to which an invitation would add nothing. */
const AT_LEAST: Readonly<Record<HelperRole, Role[]>> = {
  viewer: ["viewer", "editor", "owner"],
  editor: ["editor", "owner"],
};

/** A new invitation. @returns the token, which cannot be shown again. @throws {AppError} "not-found" for who is not the owner. */
export async function createInvitation(
  access: PatternAccess,
  { role, note }: { role: HelperRole; note: string },
): Promise<{ token: string; expiresAt: Date }> {
  const token = makeToken();
  const createdAt = new Date();
  const expiresAt = new Date(createdAt.getTime() + DAYS_OPEN * DAY_MS);
  const invitation = { role, note, createdAt, expiresAt, tokenHash: hashToken(token) };
  try {
    await database().pattern.update({
      where: patternOwnerScope(access),
      data: { invitations: { create: invitation } },
      select: { id: true },
    });
  } catch (error) {
    throw isAbsent(error) ? new AppError("not-found") : error;
  }
  return { token, expiresAt };
}

/** A row that was not found under the write's own conditions. */
function isAbsent(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2025";
}

/** Withdraws it. @throws {AppError} "changed-meanwhile" where someone has accepted it, or it is withdrawn. */
export async function withdrawInvitation(access: PatternAccess, invitationId: string): Promise<void> {
  const { count } = await database().invitation.updateMany({
    where: { id: invitationId, acceptedAt: null, withdrawnAt: null, pattern: patternOwnerScope(access) },
    data: { withdrawnAt: new Date() },
  });
  if (count === 0)
    throw new AppError(
      "changed-meanwhile",
      "This invitation was accepted or withdrawn in the meantime. Reload the page.",
    );
}

/**
 * Gives the viewer the invitation's role. The link works once, and never lowers a role.
 *
 * @returns the pattern; null, and nothing is changed, where it is no longer open or would add nothing.
 */
export async function acceptInvitation(
  { invitationId }: InvitationAccess,
  { accountId }: Viewer,
): Promise<string | null> {
  return await inTransaction(async (transaction) => {
    const now = new Date();
    const open = { id: invitationId, acceptedAt: null, withdrawnAt: null, expiresAt: { gt: now } };
    const adds = (role: HelperRole) => ({
      role,
      pattern: { memberships: { none: { accountId, role: { in: AT_LEAST[role] } } } },
    });
    const [taken] = await transaction.invitation.updateManyAndReturn({
      where: { ...open, OR: [adds("viewer"), adds("editor")] },
      data: { acceptedAt: now, acceptedById: accountId },
      select: { patternId: true, role: true },
    });
    if (taken === undefined) return null;
    await raisePart(transaction, { ...taken, accountId });
    return taken.patternId;
  });
}

/** If one person accepts two links at once, they keep the higher role, whichever comes last. */
async function raisePart(
  transaction: Connection,
  { patternId, accountId, role }: { patternId: string; accountId: string; role: Role },
): Promise<void> {
  await transaction.membership.createMany({ data: { patternId, accountId, role }, skipDuplicates: true });
  if (role !== "editor") return;
  await transaction.membership.updateMany({ where: { patternId, accountId, role: "viewer" }, data: { role } });
}
