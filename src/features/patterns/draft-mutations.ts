import "server-only";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { patternEditScope, type PatternAccess } from "./access";
import { draftOf } from "./data";
import type { Typed } from "./schema";

export type DraftSave =
  | { readonly status: "saved"; readonly version: number }
  /** Somebody's save came first: theirs stands, hers is kept beside it until she decides. */
  | { readonly status: "late"; readonly version: number; readonly theirs: Typed; readonly theirName: string | null };

interface DraftEdits {
  readonly typed: Typed;
  /** The version that was read; 0 where there was no draft. */
  readonly version: number;
  readonly baseNumber: number;
}

/** Saves edits over the version they were read from; a save that comes too late keeps both texts. */
export async function saveDraft(access: PatternAccess, edits: DraftEdits): Promise<DraftSave> {
  const saved = edits.version === 0 ? await beginDraft(access, edits) : await continueDraft(access, edits);
  if (saved) return { status: "saved", version: edits.version + 1 };
  await keepLateSave(access, edits.typed);
  const theirs = await draftOf(access);
  return {
    status: "late",
    version: theirs?.version ?? 0,
    theirs: theirs?.typed ?? {},
    theirName: theirs?.updatedBy ?? null,
  };
}

/** Throws the edits away, where they are still the version that was read. */
export async function discardDraft(access: PatternAccess, version: number): Promise<void> {
  const { count } = await database().draft.deleteMany({ where: { version, pattern: patternEditScope(access) } });
  if (count === 0) throw new AppError("changed-meanwhile");
}

/** Forgets the viewer's own late edits, once she has taken or left them. */
export async function dropLateSave(access: PatternAccess): Promise<void> {
  await database().lateSave.deleteMany({ where: { accountId: access.accountId, pattern: patternEditScope(access) } });
}

async function beginDraft(access: PatternAccess, { typed, baseNumber }: DraftEdits): Promise<boolean> {
  const base = await database().revision.findFirst({
    where: { number: baseNumber, pattern: patternEditScope(access) },
    select: { id: true },
  });
  if (base === null) throw new AppError("not-found");
  try {
    await database().pattern.update({
      where: patternEditScope(access),
      data: { draft: { create: { typed, baseId: base.id, updatedById: access.accountId } } },
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

async function continueDraft(access: PatternAccess, { typed, version }: DraftEdits): Promise<boolean> {
  const { count } = await database().draft.updateMany({
    where: { version, pattern: patternEditScope(access) },
    data: { typed, version: { increment: 1 }, updatedById: access.accountId, updatedAt: new Date() },
  });
  return count === 1;
}

async function keepLateSave(access: PatternAccess, typed: Typed): Promise<void> {
  const key = { patternId: access.patternId, accountId: access.accountId };
  await database().pattern.update({
    where: patternEditScope(access),
    data: {
      lateSaves: {
        upsert: {
          where: { patternId_accountId: key },
          create: { typed, accountId: access.accountId },
          update: { typed, createdAt: new Date() },
        },
      },
    },
  });
}
