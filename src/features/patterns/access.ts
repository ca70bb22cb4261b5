import "server-only";
import { cache } from "react";
import { z } from "zod";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { type Connection } from "@/server/transaction";
import { AppError } from "@/server/errors";
import type { Proof } from "@/server/proof";
import type { Viewer } from "@/server/viewer";
import { hashToken } from "./invitation-token";

export type Role = "owner" | "editor" | "viewer";

/** What an owner can give to others. */
export type HelperRole = Exclude<Role, "owner">;

/** That a person has a part in a pattern, and which. */
export interface PatternAccess extends Proof<"pattern"> {
  readonly patternId: string;
  readonly accountId: string;
  readonly role: Role;
}

/** That somebody holds an invitation's link, whoever it is. */
export interface InvitationAccess extends Proof<"invitation"> {
  readonly invitationId: string;
}

const RANK: Readonly<Record<Role, number>> = { viewer: 0, editor: 1, owner: 2 };
const EDITING_ROLES: Role[] = ["editor", "owner"];

/**
 * Proves that the viewer has a part in a pattern.
 *
 * @param least the least role that will do.
 * @throws {AppError} "not-found" where the pattern is absent or none of the viewer's; "not-allowed" where she may only look.
 */
export const patternAccess = cache(
  async (viewer: Viewer, patternId: string, least: Role): Promise<PatternAccess> =>
    await provePattern(database(), { viewer, patternId, least }),
);

/** The same inside a transaction, which sees what it has just made itself; see `patternAccess`. */
export async function provePattern(
  connection: Connection,
  { viewer, patternId, least }: { viewer: Viewer; patternId: string; least: Role },
): Promise<PatternAccess> {
  if (!z.uuid().safeParse(patternId).success) throw new AppError("not-found");
  const membership = await connection.membership.findUnique({
    where: { patternId_accountId: { patternId, accountId: viewer.accountId } },
    select: { patternId: true, accountId: true, role: true },
  });
  return patternProof(membership, least);
}

/** What somebody's part in a pattern proves; see `patternAccess`. */
export function patternProof(
  membership: { readonly patternId: string; readonly accountId: string; readonly role: Role } | null,
  least: Role,
): PatternAccess {
  if (membership === null) throw new AppError("not-found");
  if (!reaches(membership.role, least)) throw new AppError("not-allowed");
  return membership as PatternAccess;
}

/** True where a role is the least or above it. */
export function reaches(role: Role, least: Role): boolean {
  return RANK[role] >= RANK[least];
}

/** Where clause of the pattern that was proved, for reading. */
export function patternScope({ patternId, accountId }: PatternAccess): Prisma.PatternWhereUniqueInput {
  return { id: patternId, memberships: { some: { accountId } } };
}

/** Where clause of the pattern that was proved, for writing: false for those who may only look. */
export function patternEditScope({ patternId, accountId }: PatternAccess): Prisma.PatternWhereUniqueInput {
  return { id: patternId, memberships: { some: { accountId, role: { in: EDITING_ROLES } } } };
}

/** Where clause of the pattern that was proved, for what its owner alone may do. */
export function patternOwnerScope({ patternId, accountId }: PatternAccess): Prisma.PatternWhereUniqueInput {
  return { id: patternId, memberships: { some: { accountId, role: "owner" } } };
}

/** Proves that a token is an invitation's, taken or not. @throws {AppError} "not-found" for any other text. */
export async function invitationAccess(token: string): Promise<InvitationAccess> {
  const invitation = await database().invitation.findUnique({
    where: { tokenHash: hashToken(token) },
    select: { id: true },
  });
  if (invitation === null) throw new AppError("not-found");
  return { invitationId: invitation.id } as InvitationAccess;
}
