import "server-only";
import { z } from "zod";
import { findBlock, givesNumber, type InstructionBlock, type Place } from "@/engine/instructions";
import type { PatternDocument } from "@/engine/pattern";
import { database } from "@/server/database";
import { patternScope, type PatternAccess } from "../access";
import { revisionById } from "../data";
import { placeSchema } from "../schema";

/** A number of the written instructions that is to be put right. */
export interface InstructionFix {
  readonly fixId: string;
  readonly size: string;
  readonly count: string;
  readonly was: number;
  readonly becomes: number;
  /** What the passages of the newest text give in that size; "none" where they were not found. */
  readonly gives: "wrong" | "right" | "none";
  readonly passages: readonly InstructionBlock[];
}

const FIX = { id: true, size: true, count: true, was: true, becomes: true } as const;

/** What is still to be put right in the newest text, the earliest first. */
export async function openInstructionFixes(access: PatternAccess, newest: PatternDocument): Promise<InstructionFix[]> {
  const rows = await database().instructionFix.findMany({
    where: { doneAt: null, revision: { pattern: patternScope(access) } },
    orderBy: [{ revision: { number: "asc" } }, { id: "asc" }],
    select: { ...FIX, revisionId: true, places: true },
  });
  const open: InstructionFix[] = [];
  for (const { id, revisionId, places: stored, ...fix } of rows) {
    if (!newest.counts.some((count) => count.id === fix.count)) continue;
    const places = z.array(placeSchema).parse(stored);
    const found = stillToFix({ ...fix, places }, newest);
    const isSameText = async () =>
      (await revisionById(access, revisionId)).document.instructions === newest.instructions;
    if (found.gives !== "none" || (places.length === 0 && (await isSameText())))
      open.push({ ...fix, ...found, fixId: id });
  }
  return open;
}

/** A fix that somebody ticked off. */
export interface TickedOffFix extends Pick<InstructionFix, "fixId" | "size" | "count" | "was" | "becomes"> {
  readonly doneAt: Date;
  /** Null where their account is gone. */
  readonly doneBy: string | null;
}

const MOST_TICKED_OFF = 50;

/** What was ticked off, the latest first. */
export async function tickedOffFixes(access: PatternAccess): Promise<TickedOffFix[]> {
  const rows = await database().instructionFix.findMany({
    where: { doneAt: { not: null }, revision: { pattern: patternScope(access) } },
    orderBy: [{ doneAt: "desc" }, { id: "asc" }],
    take: MOST_TICKED_OFF,
    select: { ...FIX, doneAt: true, doneBy: { select: { name: true } } },
  });
  return rows.flatMap(({ id, doneAt, doneBy, ...fix }) =>
    doneAt === null ? [] : [{ ...fix, fixId: id, doneAt, doneBy: doneBy?.name ?? null }],
  );
}

/**
 * The passages that keep a fix open: those that still give the wrong number; where none ever did, those that gave the right
 * one, as long as none of them has changed.
 */
function stillToFix(
  { size, was, places }: Pick<InstructionFix, "size" | "was"> & { readonly places: readonly Place[] },
  { sizes, instructions = "" }: PatternDocument,
): Pick<InstructionFix, "gives" | "passages"> {
  const index = sizes.findIndex(({ id }) => id === size);
  const blocks = places.flatMap((place) => findBlock(instructions, place) ?? []);
  if (index === -1 || blocks.length === 0) return { gives: "none", passages: [] };
  const wrong = blocks.filter(({ text }) => givesNumber(text, sizes.length, { size: index, number: was }));
  if (wrong.length > 0) return { gives: "wrong", passages: wrong };
  const isUnchanged = places.every(({ hash }) => blocks.some(({ place }) => place.hash === hash));
  return isUnchanged ? { gives: "right", passages: blocks } : { gives: "none", passages: [] };
}
