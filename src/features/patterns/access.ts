import "server-only";
import { cache } from "react";
import { z } from "zod";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { type Connection } from "@/server/transaction";
import { AppError } from "@/server/errors";
import type { Proof } from "@/server/proof";
import type { Viewer } from "@/server/viewer";
import { hashToken } from "./people/invitation-token";

export type Role = "owner" | "editor" | "viewer";

/** The roles an owner can give to others. */
export type HelperRole = Exclude<Role, "owner">;

/** A person's role in a pattern. */
export interface PatternAccess extends Proof<"pattern"> {
  readonly patternId: string;
  readonly accountId: string;
  readonly role: Role;
}

/** Someone has an invitation's link, whoever they are. */
export interface InvitationAccess extends Proof<"invitation"> {
  readonly invitationId: string;
}

const RANK: Readonly<Record<Role, number>> = { viewer: 0, editor: 1, owner: 2 };
const EDITING_ROLES: Role[] = ["editor", "owner"];

/**
 * Proves that the viewer has a role in a pattern.
 *
 * @param least the least role that will do.
 * @throws {AppError} "not-found" where the pattern does not exist or is not the viewer's; "not-allowed" where they may only view.
 */
export const patternAccess = cache(
  async (viewer: Viewer, patternId: string, least: Role): Promise<PatternAccess> =>
    await provePattern(database(), { viewer, patternId, least }),
);

/** The same inside a transaction, which sees its own writes; see `patternAccess`. */
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

/** The access that a role gives; see `patternAccess`. */
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

/** Where clause of the pattern that was proved, for writing: false for those who may only view. */
export function patternEditScope({ patternId, accountId }: PatternAccess): Prisma.PatternWhereUniqueInput {
  return { id: patternId, memberships: { some: { accountId, role: { in: EDITING_ROLES } } } };
}

/** Where clause of the pattern that was proved, for what only its owner may do. */
export function patternOwnerScope({ patternId, accountId }: PatternAccess): Prisma.PatternWhereUniqueInput {
  return { id: patternId, memberships: { some: { accountId, role: "owner" } } };
}

/** Proves that a token is an invitation's, accepted or not. @throws {AppError} "not-found" for any other text. */
export async function invitationAccess(token: string): Promise<InvitationAccess> {
  const invitation = await database().invitation.findUnique({
    where: { tokenHash: hashToken(token) },
    select: { id: true },
  });
  if (invitation === null) throw new AppError("not-found");
  return { invitationId: invitation.id } as InvitationAccess;
}
