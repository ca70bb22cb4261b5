import "server-only";
import { parsePattern, type PatternDocument } from "@/engine/pattern";
import { callEditScope, callScope, type CallAccess } from "@/features/calls/access";
import { holdCall } from "@/features/calls/mutations";
import { patternEditScope } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { noteCorrectedSizes } from "@/features/patterns/follow-up/follow-up-mutations";
import { saveRevision } from "@/features/patterns/mutations";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { readCorrections } from "./correction-data";
import { revisedPattern } from "./revised-pattern";

interface TakenIn {
  readonly correctionIds: readonly string[];
  /** The newest revision that the designer saw. */
  readonly baseNumber: number;
}

/**
 * Saves the next revision with open corrections of a call in its grading and its text, and their words as its list of
 * changes. Edits that are not saved yet stay.
 *
 * @returns the number of the revision that has them.
 * @throws {AppError} "changed-meanwhile" if there is a newer revision, or one of them is no longer open; "not-found" if the
 *   viewer may not edit; "nothing-to-send" if they change nothing in the pattern, or it could not be saved with them.
 */
export async function takeIn(access: CallAccess, { correctionIds, baseNumber }: TakenIn): Promise<number> {
  return await inTransaction(async (transaction) => {
    await holdForEdit(transaction, access);
    const { number, document } = await latestRevision(access.pattern, transaction);
    const corrections = await readCorrections(transaction, openOnes(access, correctionIds));
    if (number !== baseNumber || corrections.length < new Set(correctionIds).size || corrections.length === 0)
      throw new AppError("changed-meanwhile", CHANGED);
    const revised = revisedPattern(document, corrections);
    if (!revised.isChanged) throw new AppError("nothing-to-send", NOTHING);
    const reason = corrections.map(({ text }) => text).join("\n");
    const after = savable(revised.document);
    const next = { document: after, reason: shortened(reason), baseNumber };
    const saved = await saveRevision(access.pattern, next, transaction);
    const textFixes = corrections.flatMap(({ numbers }) => numbers);
    await noteCorrectedSizes(transaction, { revisionId: saved.revisionId, before: document, after, textFixes });
    await note(transaction, { access, correctionIds, revisionId: saved.revisionId });
    return saved.number;
  });
}

/**
 * Notes that the newest revision has corrections already, as where the designer wrote them in by hand.
 *
 * @throws {AppError} as `takeIn`.
 */
export async function noteTakenIn(access: CallAccess, { correctionIds, baseNumber }: TakenIn): Promise<void> {
  await inTransaction(async (transaction) => {
    await holdForEdit(transaction, access);
    const { number, revisionId } = await latestRevision(access.pattern, transaction);
    if (number !== baseNumber) throw new AppError("changed-meanwhile", CHANGED);
    await note(transaction, { access, correctionIds, revisionId });
  });
}

const CHANGED = "The pattern or its corrections have changed since you opened this page. Reload it, then choose again.";
const NOTHING =
  "These corrections change no number that Sizewright finds in the pattern. Edit the pattern by hand, then mark them as done.";
const NOT_SAVABLE = "The pattern cannot be saved with these corrections. Edit the pattern by hand.";
const MAX_REASON_LENGTH = 1_000;

/** The pattern first and then the call, as wherever both are written. */
async function holdForEdit(transaction: Connection, access: CallAccess): Promise<void> {
  const { patternId: id } = access.pattern;
  const { count } = await transaction.pattern.updateMany({ where: patternEditScope(access.pattern), data: { id } });
  if (count === 0 || !(await holdCall(transaction, access.callId, callEditScope(access))))
    throw new AppError("not-found");
}

function openOnes(access: CallAccess, correctionIds: readonly string[]) {
  return { call: callScope(access), id: { in: [...correctionIds] }, takenInId: null };
}

function savable(document: PatternDocument): PatternDocument {
  const parsed = parsePattern(document);
  if (!parsed.ok) throw new AppError("nothing-to-send", NOT_SAVABLE);
  return parsed.document;
}

function shortened(text: string): string {
  return text.length > MAX_REASON_LENGTH ? `${text.slice(0, MAX_REASON_LENGTH - 1).toWellFormed()}…` : text;
}

interface Noted {
  readonly access: CallAccess;
  readonly correctionIds: readonly string[];
  readonly revisionId: string;
}

async function note(transaction: Connection, { access, correctionIds, revisionId }: Noted): Promise<void> {
  const where = { ...openOnes(access, correctionIds), call: callEditScope(access) };
  await transaction.correction.updateMany({ where, data: { takenInId: revisionId } });
}
