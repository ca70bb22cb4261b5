import "server-only";
import type { Place } from "@/engine/instructions";
import { callScope, type CallAccess } from "@/features/calls/access";
import { revisionSelect, toRevision } from "@/features/patterns/data";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import { OWN_PHOTO, toOwnPhoto, type OwnPhoto } from "@/features/testing/photos/own-photo-data";
import { placeSchema } from "@/features/patterns/schema";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";

/** The instructions that a tester reads. @throws {AppError} "not-found" if the tester has no revision. */
export async function textOfTester(
  access: TesterAccess,
): Promise<{ readonly revisionId: string; readonly text: string }> {
  const row = await database().tester.findUnique({
    where: testerScope(access),
    select: { revision: { select: revisionSelect } },
  });
  if (row?.revision == null) throw new AppError("not-found");
  const { revisionId, document } = toRevision(row.revision);
  return { revisionId, text: document.instructions ?? "" };
}

/** A question as any tester of the call may read it: without who asked. */
export interface ReadQuestion {
  readonly questionId: string;
  readonly place: Place;
  readonly asks: string;
  readonly answer: string | null;
  /** The reader asked it. */
  readonly isOwn: boolean;
}

export interface OwnTrouble {
  readonly troubleId: string;
  readonly place: Place;
  readonly happened: string;
  readonly did: string;
  readonly photos: readonly OwnPhoto[];
}

/** The notes for one tester: every answered question of the call, their own questions and their own trouble spots. */
export async function placeNotes(
  access: TesterAccess,
): Promise<{ readonly questions: readonly ReadQuestion[]; readonly troubles: readonly OwnTrouble[] }> {
  const { testerId } = access;
  const tester = testerScope(access);
  const [questions, troubles] = await Promise.all([
    database().question.findMany({
      where: { call: { testers: { some: tester } }, OR: [{ answer: { not: null } }, { testerId }] },
      orderBy: [{ createdAt: "asc" }, { id: "asc" }],
      select: { id: true, testerId: true, place: true, asks: true, answer: true },
    }),
    database().troubleSpot.findMany({
      where: { tester },
      orderBy: [{ createdAt: "asc" }, { id: "asc" }],
      select: {
        ...{ id: true, place: true, happened: true, did: true },
        photos: { orderBy: [{ createdAt: "asc" }, { id: "asc" }], select: OWN_PHOTO },
      },
    }),
  ]);
  return {
    questions: questions.map(({ id, place, testerId: asker, asks, answer }) => {
      return { questionId: id, place: placeSchema.parse(place), asks, answer, isOwn: asker === testerId };
    }),
    troubles: troubles.map(({ id, place, photos, ...trouble }) => ({
      ...{ troubleId: id, place: placeSchema.parse(place), photos: photos.map(toOwnPhoto) },
      ...trouble,
    })),
  };
}

/** The number of a call's questions that wait for an answer. */
export async function unansweredCount(access: CallAccess): Promise<number> {
  return await database().question.count({ where: { call: callScope(access), answer: null } });
}
