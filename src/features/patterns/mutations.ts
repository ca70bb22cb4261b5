import "server-only";
import { randomUUID } from "node:crypto";
import type { PatternDocument } from "@/engine/pattern";
import { Prisma } from "@/generated/prisma/client";
import { inTransaction, type Connection } from "@/server/transaction";
import { AppError } from "@/server/errors";
import type { Viewer } from "@/server/viewer";
import { patternEditScope, type PatternAccess } from "./access";

interface NewPattern {
  readonly document: PatternDocument;
  readonly reason: string;
  readonly isDemo?: boolean;
  /** Idempotency key of the form; the same key again makes no second pattern. */
  readonly idempotencyKey?: string;
}

interface MadePattern {
  readonly patternId: string;
  /** Its first revision. */
  readonly revisionId: string;
  /** False where it existed already, made by the same request. */
  readonly isNew: boolean;
}

/**
 * A new pattern of the viewer's, with its first revision; or the one that the same request has made already.
 *
 * @param connection a transaction that it is part of.
 * @throws {AppError} "not-found" where the key is someone else's.
 */
export async function createPattern(
  viewer: Viewer,
  { document, reason, isDemo = false, idempotencyKey }: NewPattern,
  connection?: Connection,
): Promise<MadePattern> {
  const { accountId } = viewer;
  return await inTransaction(async (transaction) => {
    const patternId = randomUUID();
    // A repeated request waits here until the first is finished, and then inserts nothing.
    const { count } = await transaction.pattern.createMany({
      data: [{ id: patternId, isDemo, idempotencyKey }],
      skipDuplicates: true,
    });
    if (count === 0) return await patternOfSending(transaction, { accountId, idempotencyKey });
    await transaction.membership.create({ data: { patternId, accountId, role: "owner" } });
    const { id: revisionId } = await transaction.revision.create({
      data: { patternId, number: 1, document, reason, createdById: accountId },
      select: { id: true },
    });
    return { patternId, revisionId, isNew: true };
  }, connection);
}

async function patternOfSending(
  transaction: Connection,
  { accountId, idempotencyKey }: { accountId: string; idempotencyKey: string | undefined },
): Promise<MadePattern> {
  if (idempotencyKey === undefined) throw new Error("a pattern without a key was not inserted");
  const revision = await transaction.revision.findFirst({
    where: { number: 1, pattern: { idempotencyKey, memberships: { some: { accountId, role: "owner" } } } },
    select: { id: true, patternId: true },
  });
  if (revision === null) throw new AppError("not-found");
  return { patternId: revision.patternId, revisionId: revision.id, isNew: false };
}

interface NewRevision {
  readonly document: PatternDocument;
  readonly reason: string;
  readonly baseNumber: number;
  /** The version of the draft that becomes the revision, 0 where it was never saved; left out, the draft stays as it is. */
  readonly draftVersion?: number;
}

/**
 * The next revision after `baseNumber`; a trigger has the pattern's calls analysed again against it. The draft that it was made from is emptied with it; other drafts stay.
 *
 * @param connection a transaction that it is part of.
 * @throws {AppError} "changed-meanwhile" where someone has saved a revision since, or changed the draft.
 */
export async function saveRevision(
  access: PatternAccess,
  { document, reason, baseNumber, draftVersion }: NewRevision,
  connection?: Connection,
): Promise<{ revisionId: string; number: number }> {
  const number = baseNumber + 1;
  const untouched = { some: { number: baseNumber }, none: { number: { gt: baseNumber } } };
  const revision = { number, document, reason, createdById: access.accountId };
  try {
    return await inTransaction(async (transaction) => {
      const pattern = await transaction.pattern.update({
        where: { ...patternEditScope(access), revisions: untouched },
        data: { revisions: { create: revision } },
        select: { revisions: { where: { number }, select: { id: true } } },
      });
      const [saved] = pattern.revisions;
      if (saved === undefined) throw new Error("a revision was saved and is not there");
      if (draftVersion !== undefined) await resetDraft(transaction, access, { draftVersion, baseId: saved.id });
      return { revisionId: saved.id, number };
    }, connection);
  } catch (error) {
    if (isConflict(error)) throw new AppError("changed-meanwhile");
    throw error;
  }
}

/** The draft's row stays and its version number continues, so that a version never identifies two drafts. */
async function resetDraft(
  transaction: Connection,
  access: PatternAccess,
  { draftVersion, baseId }: { draftVersion: number; baseId: string },
): Promise<void> {
  const ofPattern = { pattern: patternEditScope(access) };
  const { count } = await transaction.draft.updateMany({
    where: { ...ofPattern, version: draftVersion },
    data: { typed: {}, baseId, version: { increment: 1 }, updatedById: access.accountId, updatedAt: new Date() },
  });
  if (count === 1) return;
  const others = await transaction.draft.count({ where: ofPattern });
  if (draftVersion > 0 || others > 0) throw new AppError("changed-meanwhile");
}

/** A row that was not found under the write's own conditions, or that exists already. */
function isConflict(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && (error.code === "P2025" || error.code === "P2002");
}
