import "server-only";
import type { Place } from "@/engine/instructions";
import { revisionSelect, toRevision, type Revision } from "@/features/patterns/data";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import { placeSchema } from "@/features/patterns/schema";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";

/** An answer that a tester has not read yet. */
export interface NewAnswer {
  readonly questionId: string;
  readonly place: Place;
  readonly asks: string;
  readonly answer: string;
  readonly answeredAt: Date;
  /** The reader asked. */
  readonly isOwn: boolean;
}

/**
 * Answers that a tester has not read: to their own questions and, given since they accepted, to those of others who make
 * the same size. An answer that was changed after they read it is new again.
 *
 * @returns the newest first.
 */
export async function newAnswers(access: TesterAccess): Promise<NewAnswer[]> {
  const { testerId } = access;
  const tester = await database().tester.findUnique({
    where: testerScope(access),
    select: { size: true, acceptedAt: true },
  });
  if (tester?.acceptedAt == null) throw new AppError("not-found");
  const { size, acceptedAt } = tester;
  const rows = await database().question.findMany({
    where: {
      call: { testers: { some: testerScope(access) } },
      answer: { not: null },
      OR: [{ testerId }, { tester: { size }, answeredAt: { gte: acceptedAt } }],
    },
    orderBy: [{ answeredAt: "desc" }, { id: "asc" }],
    select: {
      ...{ id: true, testerId: true, place: true, asks: true, answer: true, answeredAt: true },
      readBy: { where: { testerId }, select: { answeredAt: true } },
    },
  });
  return rows.flatMap(({ id, testerId: asker, place, asks, answer, answeredAt, readBy: [read] }) => {
    if (answer === null || answeredAt === null || read?.answeredAt.getTime() === answeredAt.getTime()) return [];
    const isOwn = asker === testerId;
    return [{ questionId: id, place: placeSchema.parse(place), asks, answer, answeredAt, isOwn }];
  });
}

/** The pattern's newest revision, where it is newer than the tester's. */
export interface NewerRevision extends Revision {
  /** The tester has marked it as read. */
  readonly isRead: boolean;
}

/** @param than the number of the tester's revision. */
export async function newerRevision(access: TesterAccess, than: number): Promise<NewerRevision | null> {
  const row = await database().revision.findFirst({
    where: {
      number: { gt: than },
      pattern: { calls: { some: { id: access.callId, testers: { some: testerScope(access) } } } },
    },
    orderBy: { number: "desc" },
    select: revisionSelect,
  });
  if (row === null) return null;
  const tester = await database().tester.findUnique({
    where: testerScope(access),
    select: { readRevisionNumber: true },
  });
  return { ...toRevision(row), isRead: (tester?.readRevisionNumber ?? 0) >= row.number };
}
