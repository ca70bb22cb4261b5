import "server-only";
import { callPriorSchema, type CallPrior, type EarlierCall } from "@/engine/pattern";
import { patternScope } from "@/features/patterns/access";
import { revisionById } from "@/features/patterns/data";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { callScope, type CallAccess } from "./access";
import { placesOfSizes } from "./places-computed";
import { callPlaces } from "./places-data";
import { readableCall } from "./readable-call";
import { instructionErrorsOf, reportedTesters } from "./reported-testers-data";

/** What a call learned from the designer's earlier tests when it got its first report. */
export interface Learned {
  /** Null where they showed nothing. */
  readonly prior: CallPrior | null;
  readonly isUsed: boolean;
  /** Whether there was a first report, so that nothing more is learned. */
  readonly isFrozen: boolean;
}

export async function learnedBy(access: CallAccess, connection: Connection = database()): Promise<Learned> {
  const { prior, priorAt, usesPrior } = await connection.call.findUniqueOrThrow({
    where: callScope(access),
    select: { prior: true, priorAt: true, usesPrior: true },
  });
  return { prior: callPriorSchema.nullable().parse(prior), isUsed: usesPrior, isFrozen: priorAt !== null };
}

/**
 * A call on its own, of the reports that followed the first revision that any of its reports followed: what later testers say of
 * a corrected pattern says nothing of how wrong one is at first.
 *
 * @returns null where no report can be read.
 */
export async function firstRevisionCall(access: CallAccess, connection: Connection): Promise<EarlierCall | null> {
  const instructionErrors = await instructionErrorsOf(access, connection);
  const asked = { instructionErrors, idOf: ({ code }: { readonly code: string }) => code };
  const { reported } = await reportedTesters(access, connection, asked);
  const first = await connection.revision.findFirst({
    where: { id: { in: reported.map(({ revisionId }) => revisionId) }, pattern: patternScope(access.pattern) },
    orderBy: { number: "asc" },
    select: { id: true },
  });
  if (first === null) return null;
  const { document: pattern } = await revisionById(access.pattern, first.id, connection);
  const places = placesOfSizes(await callPlaces(access, connection), pattern);
  const testers = reported.flatMap(({ tester, revisionId }) => (revisionId === first.id ? [tester] : []));
  return readableCall({ pattern, places }, { testers, leftOut: [] }).document;
}
