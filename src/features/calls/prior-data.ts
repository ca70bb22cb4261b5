import "server-only";
import { callPriorSchema, type CallPrior, type EarlierCall } from "@/engine/pattern";
import { patternScope } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { callScope, type CallAccess } from "./access";
import { callPlaces } from "./places-data";
import { instructionErrorsOf, reportedTesters } from "./reported-testers-data";
import { revisionCall } from "./revision-call-data";

/** What a call learned from the designer's earlier tests when it got its first report. */
export interface Learned {
  /** Null where they showed nothing. */
  readonly prior: CallPrior | null;
  readonly isUsed: boolean;
  /** Testers of whom their own earlier tests showed something. */
  readonly knownTesters: number;
  /** Whether there was a first report, so that nothing more is learned. */
  readonly isFrozen: boolean;
}

/** Testers with a report and a record. */
export const KNOWN = { habits: { some: {} }, reports: { some: {} } } as const;

/** The columns of a call that `toLearned` reads. */
export const LEARNED = {
  ...{ prior: true, priorAt: true, usesPrior: true },
  _count: { select: { testers: { where: KNOWN } } },
} satisfies Prisma.CallSelect;

export function toLearned({
  prior,
  priorAt,
  usesPrior,
  _count,
}: Prisma.CallGetPayload<{ select: typeof LEARNED }>): Learned {
  return {
    prior: callPriorSchema.nullable().parse(prior),
    isUsed: usesPrior,
    knownTesters: _count.testers,
    isFrozen: priorAt !== null,
  };
}

export async function learnedBy(access: CallAccess): Promise<Learned> {
  return toLearned(await database().call.findUniqueOrThrow({ where: callScope(access), select: LEARNED }));
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
  const places = await callPlaces(access, connection);
  return (await revisionCall(access, connection, { revisionId: first.id, reported, places })).document;
}
