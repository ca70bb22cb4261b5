import "server-only";
import { passagesWith } from "@/engine/instructions";
import type { PatternDocument } from "@/engine/pattern";
import { correctedSizes } from "@/engine/revision";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { patternEditScope, type PatternAccess } from "../access";
import { saveRevision } from "../mutations";

/** A number that the text gives for a count of a size, and the right one. */
interface TextFix {
  readonly count: string;
  readonly size: string;
  readonly was: number;
  readonly becomes: number;
}

interface Revised {
  /** The revision that was saved. */
  readonly revisionId: string;
  readonly before: PatternDocument;
  readonly after: PatternDocument;
  /** Counts whose number in the text is, or is to be, put right. */
  readonly textFixes?: readonly Pick<TextFix, "count" | "size">[];
}

/** Notes which sizes a revision corrects: they are to be tested again. Part of the transaction that saves it. */
export async function noteCorrectedSizes(
  connection: Connection,
  { revisionId, before, after, textFixes = [] }: Revised,
): Promise<void> {
  await connection.correctedSize.createMany({
    data: correctedSizes({ before, after, textFixes }).map(({ size, measurements }) => ({
      ...{ revisionId, size },
      measurements: [...measurements],
    })),
  });
}

/** The next revision, and which sizes it corrects; see `saveRevision`. */
export async function saveCorrectedRevision(
  access: PatternAccess,
  before: PatternDocument,
  revision: Parameters<typeof saveRevision>[1],
): Promise<{ readonly number: number }> {
  return await inTransaction(async (transaction) => {
    const { revisionId, number } = await saveRevision(access, revision, transaction);
    await noteCorrectedSizes(transaction, { revisionId, before, after: revision.document });
    return { number };
  });
}

/** Notes what is still to be put right in the text of a revision that was saved. Part of the transaction that saves it. */
export async function noteInstructionFixes(
  connection: Connection,
  { revisionId, pattern, fixes }: { revisionId: string; pattern: PatternDocument; fixes: readonly TextFix[] },
): Promise<void> {
  const { sizes, instructions = "" } = pattern;
  await connection.instructionFix.createMany({
    data: fixes.map((fix) => {
      const size = sizes.findIndex(({ id }) => id === fix.size);
      const [wrong, right] = [fix.was, fix.becomes].map((number) =>
        passagesWith(instructions, sizes.length, { size, number }),
      );
      // Where the text gives the right number, what misleads testers is near it.
      const passages = wrong?.length === 0 ? right : wrong;
      return { ...fix, revisionId, places: (passages ?? []).map(({ place }) => ({ ...place })) };
    }),
  });
}

/** Somebody says that the text has the right number. @throws {AppError} "changed-meanwhile" where that is said already, or not theirs to say. */
export async function tickOffFix(access: PatternAccess, fixId: string): Promise<void> {
  const { count } = await database().instructionFix.updateMany({
    where: { id: fixId, doneAt: null, revision: { pattern: patternEditScope(access) } },
    data: { doneAt: new Date(), doneById: access.accountId },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This was ticked off in the meantime. Reload the page.");
}

/** A fix that was ticked off is to be done after all. @throws {AppError} "changed-meanwhile" where it is open already, or not theirs. */
export async function reopenFix(access: PatternAccess, fixId: string): Promise<void> {
  const { count } = await database().instructionFix.updateMany({
    where: { id: fixId, doneAt: { not: null }, revision: { pattern: patternEditScope(access) } },
    data: { doneAt: null, doneById: null },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This was reopened in the meantime. Reload the page.");
}

/**
 * Somebody has checked corrected sizes by name in place of another test.
 *
 * @param checkedBy their name.
 * @throws {AppError} "changed-meanwhile" where none of them waits for it, or they are not theirs to sign.
 */
export async function signOffSizes(
  access: PatternAccess,
  { sizes, checkedBy }: { readonly sizes: readonly string[]; readonly checkedBy: string },
): Promise<void> {
  const { count } = await database().correctedSize.updateMany({
    where: { size: { in: [...sizes] }, checkedAt: null, revision: { pattern: patternEditScope(access) } },
    data: { checkedBy, checkedAt: new Date(), checkedById: access.accountId },
  });
  if (count === 0)
    throw new AppError("changed-meanwhile", "These sizes were signed off in the meantime. Reload the page.");
}

/** Takes back that sizes were checked, as a revision corrected them. */
export async function withdrawSignOff(
  access: PatternAccess,
  { sizes, revisionNumber }: { readonly sizes: readonly string[]; readonly revisionNumber: number },
): Promise<void> {
  await database().correctedSize.updateMany({
    where: { size: { in: [...sizes] }, revision: { number: revisionNumber, pattern: patternEditScope(access) } },
    data: { checkedBy: null, checkedAt: null, checkedById: null },
  });
}
