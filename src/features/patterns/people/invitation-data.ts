import "server-only";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Viewer } from "@/server/viewer";
import { patternOwnerScope, type HelperRole, type InvitationAccess, type PatternAccess, type Role } from "../access";
import { helperRoleSchema } from "./invitation-schema";
import { newestDocument, storedPattern } from "../data";

/** An unused invitation, as its owner sees it. */
export interface OpenInvitation {
  readonly invitationId: string;
  readonly role: HelperRole;
  readonly note: string;
  readonly createdAt: Date;
  readonly expiresAt: Date;
}

/** The invitation of a link, and the role that its holder has already. */
export interface InvitationRead {
  readonly patternId: string;
  readonly patternName: string;
  readonly ownerName: string;
  readonly role: HelperRole;
  readonly expiresAt: Date;
  readonly withdrawnAt: Date | null;
  readonly acceptedAt: Date | null;
  readonly acceptedById: string | null;
  readonly holderRole: Role | null;
}

/** The pattern's invitations that are neither accepted nor withdrawn, the newest first; for its owner. */
export async function listInvitations(access: PatternAccess): Promise<OpenInvitation[]> {
  const rows = await database().invitation.findMany({
    where: { acceptedAt: null, withdrawnAt: null, pattern: patternOwnerScope(access) },
    orderBy: { createdAt: "desc" },
    select: { id: true, role: true, note: true, createdAt: true, expiresAt: true },
  });
  return rows.map(({ id, role, ...row }) => ({ ...row, invitationId: id, role: helperRoleSchema.parse(role) }));
}

/** @param holder who has opened the link, null for a visitor. @throws {AppError} "not-found" where the owner has left. */
export async function readInvitation(access: InvitationAccess, holder: Viewer | null): Promise<InvitationRead> {
  const row = await database().invitation.findUnique({
    where: { id: access.invitationId },
    include: {
      pattern: {
        select: {
          memberships: { select: { accountId: true, role: true, account: { select: { name: true } } } },
          revisions: newestDocument,
        },
      },
    },
  });
  const { memberships = [], revisions: [latest] = [] } = row?.pattern ?? {};
  const owner = memberships.find(({ role }) => role === "owner");
  if (row === null || latest === undefined || owner === undefined) throw new AppError("not-found");
  return {
    patternId: row.patternId,
    patternName: storedPattern(latest).name,
    ownerName: owner.account.name,
    role: helperRoleSchema.parse(row.role),
    expiresAt: row.expiresAt,
    withdrawnAt: row.withdrawnAt,
    acceptedAt: row.acceptedAt,
    acceptedById: row.acceptedById,
    holderRole: memberships.find(({ accountId }) => accountId === holder?.accountId)?.role ?? null,
  };
}
