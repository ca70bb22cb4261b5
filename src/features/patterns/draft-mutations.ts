import "server-only";
import { rebaseDraft, type PatternDraft } from "@/engine/editing";
import { canonicalJson } from "@/engine/pattern";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { patternEditScope, type PatternAccess } from "./access";
import type { DraftEdits } from "./schema";
import { draftOf, latestRevision, revisionByNumber, type Revision } from "./data";

export type DraftSave =
  | { readonly status: "saved"; readonly version: number }
  /** Someone's save came first, of a draft or of a revision: it stays, and the viewer's edits are stored beside it until they decide. */
  | { readonly status: "late"; readonly version: number; readonly theirName: string | null };

/** Saves edits over the version they were read from; a conflicting save stores both texts. */
export async function saveDraft(access: PatternAccess, edits: DraftEdits): Promise<DraftSave> {
  const saved = edits.version === 0 ? await createDraft(access, edits) : await continueDraft(access, edits);
  if (saved) return { status: "saved", version: edits.version + 1 };
  const [theirs, revision] = await Promise.all([draftOf(access), latestRevision(access)]);
  const revised = revision.number > edits.baseNumber;
  if (!revised && theirs !== null) {
    // A save whose answer was lost, for example when the page was left too soon: the same text again, or one typed after it.
    if (isSame(theirs.content, edits.content)) return { status: "saved", version: theirs.version };
    if (edits.unanswered !== undefined && isSame(theirs.content, edits.unanswered))
      return await saveDraft(access, { ...edits, version: theirs.version, unanswered: undefined });
  }
  await storeConflictingDraft(access, await onNewest(access, edits, revision));
  return {
    status: "late",
    version: theirs?.version ?? 0,
    theirName: revised ? revision.createdBy : (theirs?.updatedBy ?? null),
  };
}

function isSame(one: PatternDraft | null, other: PatternDraft | null): boolean {
  return canonicalJson(one) === canonicalJson(other);
}

/** The conflicting edits, based on the newest revision. */
async function onNewest(
  access: PatternAccess,
  { content, baseNumber }: DraftEdits,
  newest: Revision,
): Promise<PatternDraft | null> {
  if (content === null || baseNumber >= newest.number) return content;
  return rebaseDraft(content, (await revisionByNumber(access, baseNumber)).document, newest.document);
}

/** Discards the edits if they are still the version that was read; the draft's version number continues. */
export async function discardDraft(access: PatternAccess, version: number): Promise<void> {
  const { count } = await database().draft.updateMany({
    where: { version, pattern: patternEditScope(access) },
    data: { typed: {}, version: { increment: 1 }, updatedById: access.accountId, updatedAt: new Date() },
  });
  if (count === 0) throw new AppError("changed-meanwhile");
}

/** Deletes the viewer's conflicting edits once they have resolved the conflict. */
export async function deleteConflictingDraft(access: PatternAccess): Promise<void> {
  await database().conflictingDraft.deleteMany({
    where: { accountId: access.accountId, pattern: patternEditScope(access) },
  });
}

/** The revision edits are made on, null where a newer one has been saved. */
async function newestBase(access: PatternAccess, baseNumber: number): Promise<string | null> {
  const newest = await database().revision.findFirst({
    where: { pattern: patternEditScope(access) },
    orderBy: { number: "desc" },
    select: { id: true, number: true },
  });
  if (newest === null) throw new AppError("not-found");
  return newest.number === baseNumber ? newest.id : null;
}

async function createDraft(access: PatternAccess, { content, baseNumber }: DraftEdits): Promise<boolean> {
  const baseId = await newestBase(access, baseNumber);
  if (baseId === null) return false;
  try {
    await database().pattern.update({
      where: patternEditScope(access),
      data: { draft: { create: { typed: content ?? {}, baseId, updatedById: access.accountId } } },
    });
    return true;
  } catch (error) {
    if (isTaken(error)) return false;
    throw error;
  }
}

/** A draft exists already: its key is taken, or the relation is. */
function isTaken(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && ["P2002", "P2014"].includes(error.code);
}

async function continueDraft(access: PatternAccess, { content, version, baseNumber }: DraftEdits): Promise<boolean> {
  const baseId = await newestBase(access, baseNumber);
  if (baseId === null) return false;
  const { count } = await database().draft.updateMany({
    where: { version, pattern: patternEditScope(access) },
    data: {
      typed: content ?? {},
      baseId,
      version: { increment: 1 },
      updatedById: access.accountId,
      updatedAt: new Date(),
    },
  });
  return count === 1;
}

async function storeConflictingDraft(access: PatternAccess, content: PatternDraft | null): Promise<void> {
  const key = { patternId: access.patternId, accountId: access.accountId };
  await database().pattern.update({
    where: patternEditScope(access),
    data: {
      conflictingDrafts: {
        upsert: {
          where: { patternId_accountId: key },
          create: { typed: content ?? {}, accountId: access.accountId },
          update: { typed: content ?? {}, createdAt: new Date() },
        },
      },
    },
  });
}
