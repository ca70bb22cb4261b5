import { readInstructions, type Place } from "@/engine/instructions";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { askedPlaces, troubledPlaces } from "@/features/testing/questions/place-notes-data";
import { questionsQuerySchema, type QuestionsQuery } from "@/features/testing/questions/questions-query";
import { storeCall } from "@/features/testing/report/document-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { callDocument, reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";

/** The instructions that are spoken of. */
export const TEXT = "# Body\n\nCast on 98 (118).\n\nRow 1: work to the end.\n";

export async function newCall(viewer: Viewer): Promise<CallAccess> {
  const call = callDocument([reader("ann", { bust: 100 }), reader("bea", { bust: 101 })], {
    pattern: patternDocument({ instructions: TEXT }),
  });
  const { callId } = await storeCall(viewer, { call, title: "Invented call" });
  return await callAccess(viewer, callId, "editor");
}

/** Access by link as `testerAccess` proves it; there are no request cookies here. */
export async function testerOf({ callId }: CallAccess, code: string): Promise<TesterAccess> {
  const { id } = await database().tester.update({
    where: { callId_code: { callId, code } },
    data: { invitedAt: new Date(), acceptedAt: new Date(), revisionId: await newestRevision(callId) },
  });
  return { testerId: id, callId, accountId: null, linkVersion: 1 } as TesterAccess;
}

export async function newestRevision(callId: string): Promise<string> {
  const row = await database().revision.findFirstOrThrow({ where: { pattern: { calls: { some: { id: callId } } } } });
  return row.id;
}

export function placeAt(block: number): Place {
  const found = readInstructions(TEXT)[block];
  if (found === undefined) throw new Error("no such block");
  return found.place;
}

export const saidQuery = (query: Partial<QuestionsQuery> = {}): QuestionsQuery => questionsQuerySchema.parse(query);

/** Every question that the designer's page shows, the earliest first. */
export async function callQuestions(access: CallAccess) {
  const { places } = await askedPlaces(access, { instructions: TEXT }, saidQuery());
  const questions = places.flatMap(({ notes, threads }) =>
    threads.flatMap(({ shown, answer, answeredAt, answeredBy }) =>
      shown.map(({ id, ...question }) => {
        return { ...question, questionId: id, answer, answeredAt, answeredBy, place: notes[0]?.place };
      }),
    ),
  );
  return questions.toSorted((one, other) => one.createdAt.getTime() - other.createdAt.getTime());
}

export async function callTroubles(access: CallAccess) {
  const { places } = await troubledPlaces(access, { instructions: TEXT }, saidQuery());
  return places.flatMap(({ troubles }) => troubles.shown);
}
