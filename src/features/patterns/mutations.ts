import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Viewer } from "@/server/viewer";
import { patternEditScope, type PatternAccess } from "./access";
import type { Typed } from "./schema";

/** A new pattern of the viewer's, with its first revision. */
export async function createPattern(
  viewer: Viewer,
  { document, reason, invented = false }: { document: PatternDocument; reason: string; invented?: boolean },
): Promise<{ patternId: string; revisionId: string }> {
  const pattern = await database().pattern.create({
    data: {
      invented,
      memberships: { create: { accountId: viewer.accountId, role: "owner" } },
      revisions: { create: { number: 1, document, reason, createdById: viewer.accountId } },
    },
    select: { id: true, revisions: { select: { id: true } } },
  });
  const [revision] = pattern.revisions;
  if (revision === undefined) throw new Error("a pattern was made without its revision");
  return { patternId: pattern.id, revisionId: revision.id };
}

/**
 * The next revision after `baseNumber`; the draft is spent with it.
 *
 * @throws {AppError} "changed-meanwhile" where somebody has saved a revision since.
 */
export async function saveRevision(
  access: PatternAccess,
  { document, reason, baseNumber }: { document: PatternDocument; reason: string; baseNumber: number },
): Promise<{ revisionId: string; number: number }> {
  const number = baseNumber + 1;
  const untouched = { some: { number: baseNumber }, none: { number: { gt: baseNumber } } };
  const revision = { number, document, reason, createdById: access.accountId };
  try {
    return await database().$transaction(async (transaction) => {
      const pattern = await transaction.pattern.update({
        where: { ...patternEditScope(access), revisions: untouched },
        data: { revisions: { create: revision } },
        select: { revisions: { where: { number }, select: { id: true } } },
      });
      await transaction.draft.deleteMany({ where: { pattern: patternEditScope(access) } });
      const [saved] = pattern.revisions;
      if (saved === undefined) throw new Error("a revision was saved and is not there");
      return { revisionId: saved.id, number };
    });
  } catch (error) {
    if (isConflict(error)) throw new AppError("changed-meanwhile");
    throw error;
  }
}

/** A row that was not found under the write's own conditions, or that exists already. */
function isConflict(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && (error.code === "P2025" || error.code === "P2002");
}
