import "server-only";
import type { FieldMessage } from "@/engine/reporting";
import { openTesterScope, testerScope, type TesterAccess } from "@/features/testing/home/access";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { readDraft } from "./data";
import { mergeFields, type Clash, type FieldChange } from "./merge-fields";

/** The changes that could not be saved; all others were. */
export interface SavedFields {
  readonly clashes: readonly Clash[];
  readonly refused: readonly FieldMessage[];
}

/**
 * Saves what a tester typed, field by field. The same changes sent twice change nothing.
 *
 * @throws {AppError} "closed" if the call is closed or the tester has stopped; "not-found" if access was lost in the meantime.
 */
export async function saveFields(access: TesterAccess, changes: readonly FieldChange[]): Promise<SavedFields> {
  return await inTransaction(async (transaction) => {
    await lockOpenTester(transaction, access);
    const { typed: stored } = await readDraft(access, transaction);
    const { typed, clashes, refused } = mergeFields(stored, changes);
    if (!isSame(stored, typed)) await storeTyped(transaction, access, typed);
    return { clashes, refused };
  });
}

/** Stores a draft's fields in place of all before; the caller has locked the tester's row. */
export async function storeTyped(
  transaction: Connection,
  access: TesterAccess,
  typed: Readonly<Record<string, string>>,
): Promise<void> {
  await transaction.tester.update({
    where: reportingScope(access),
    data: {
      reportDraft: {
        upsert: { create: { typed }, update: { typed, version: { increment: 1 }, updatedAt: new Date() } },
      },
    },
  });
}

/** Where clause of the tester that was proved, for writing while the report can be changed. */
export function reportingScope(access: TesterAccess) {
  return { ...openTesterScope(access), stoppedAt: null };
}

/**
 * Locks the tester's row, so that two devices of one tester take turns.
 *
 * @throws {AppError} as `whyClosed` gives it.
 */
export async function lockOpenTester(transaction: Connection, access: TesterAccess): Promise<void> {
  const { count } = await transaction.tester.updateMany({ where: reportingScope(access), data: { stoppedAt: null } });
  if (count === 0) throw await whyClosed(transaction, access);
}

/** Why a tester with access cannot report. */
export async function whyClosed(transaction: Connection, access: TesterAccess): Promise<AppError> {
  const tester = await transaction.tester.findUnique({
    where: testerScope(access),
    select: { stoppedAt: true, stoppedByDesigner: true },
  });
  if (tester === null) return new AppError("not-found");
  if (tester.stoppedAt === null) return new AppError("closed");
  return new AppError("closed", tester.stoppedByDesigner ? ENDED : STOPPED);
}

const STOPPED = "You have stopped this test, so nothing can be added to your report.";
const ENDED = "The designer ended your test, so nothing can be added to your report.";

function isSame(left: Readonly<Record<string, string>>, right: Readonly<Record<string, string>>): boolean {
  const names = Object.keys(left);
  return names.length === Object.keys(right).length && names.every((name) => left[name] === right[name]);
}
