import "server-only";
import type { Place } from "@/engine/instructions";
import type { NumberChange } from "@/features/calls/correction-schema";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { holdCall } from "@/features/calls/mutations";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { writeCorrection } from "./correction-mail-mutations";

interface NewCorrection {
  readonly text: string;
  /** The newest revision, and the first passage in it that is wrong; null for none. */
  readonly revisionId: string;
  readonly place: Place | null;
  readonly morePlaces?: readonly Place[];
  readonly numbers?: readonly NumberChange[];
  /** Ids; none stands for all sizes. */
  readonly sizes: readonly string[];
  /** Made once by the sender; the same key again stores nothing. */
  readonly idempotencyKey: string;
}

/**
 * Publishes a correction to the testers of a call, open or closed: what is wrong stays wrong for those who have finished.
 *
 * @param connection a transaction that it is part of.
 * @throws {AppError} "not-found" if the viewer may not edit the call.
 */
export async function publishCorrection(
  access: CallAccess,
  { place, morePlaces = [], numbers = [], sizes, ...correction }: NewCorrection,
  connection?: Connection,
): Promise<void> {
  const { callId, pattern } = access;
  await inTransaction(async (transaction) => {
    if (!(await holdCall(transaction, callId, callEditScope(access)))) throw new AppError("not-found");
    const { count } = await transaction.correction.createMany({
      data: {
        ...correction,
        ...{ callId, authorId: pattern.accountId, sizes: [...sizes] },
        morePlaces: morePlaces.map((more) => ({ ...more })),
        numbers: numbers.map((number) => ({ ...number })),
        ...(place === null ? {} : { place: { ...place } }),
      },
      skipDuplicates: true,
    });
    if (count > 0) await writeCorrection(transaction, access, { ...correction, sizes, numbers });
  }, connection);
}
