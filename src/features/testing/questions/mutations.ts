import "server-only";
import type { Place } from "@/engine/instructions";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { holdOpenCall } from "@/features/calls/mutations";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { answeredContent } from "./answered-copy";

interface AtPlace {
  /** The revision that contains the place. */
  readonly revisionId: string;
  readonly place: Place;
  /** Made once by the sender; the same key again stores nothing. */
  readonly idempotencyKey: string;
}

/**
 * Stores a question about a place of the instructions.
 *
 * @throws {AppError} "closed" if the call is closed or access was lost in the meantime.
 */
export async function askQuestion(
  access: TesterAccess,
  { asks, ...at }: AtPlace & { readonly asks: string },
): Promise<void> {
  const { testerId, callId } = access;
  await addOnce(access, {
    isStored: async ({ question }) =>
      (await question.count({ where: { idempotencyKey: at.idempotencyKey, testerId } })) > 0,
    add: ({ question }) => question.create({ data: { ...at, place: { ...at.place }, asks, testerId, callId } }),
  });
}

/**
 * Stores a trouble spot.
 *
 * @throws {AppError} "closed" if the call is closed or access was lost in the meantime.
 */
export async function reportTrouble(
  access: TesterAccess,
  { happened, did, ...at }: AtPlace & { readonly happened: string; readonly did: string },
): Promise<void> {
  const { testerId } = access;
  await addOnce(access, {
    isStored: async ({ troubleSpot }) =>
      (await troubleSpot.count({ where: { idempotencyKey: at.idempotencyKey, testerId } })) > 0,
    add: ({ troubleSpot }) => troubleSpot.create({ data: { ...at, place: { ...at.place }, happened, did, testerId } }),
  });
}

/** Deletes the tester's own trouble spot, if it still exists. */
export async function takeBackTrouble(access: TesterAccess, troubleId: string): Promise<void> {
  await database().troubleSpot.deleteMany({ where: { id: troubleId, tester: testerScope(access) } });
}

/** Deletes the tester's own question unless it is answered, because an answer is for all testers. */
export async function takeBackQuestion(access: TesterAccess, questionId: string): Promise<void> {
  await database().question.deleteMany({ where: { id: questionId, answer: null, tester: testerScope(access) } });
}

interface Answer {
  readonly questionIds: readonly string[];
  readonly answer: string;
  /** When the answer that is being changed was given; null for a first answer. */
  readonly seenAt: Date | null;
}

/**
 * Answers questions for all testers, or changes their answer. All of them or none.
 *
 * @throws {AppError} "changed-meanwhile" if one has a different answer by now, was deleted, or belongs to a call that
 * the viewer may not edit.
 */
export async function answerQuestions(access: CallAccess, { questionIds, answer, seenAt }: Answer): Promise<void> {
  await inTransaction(async (transaction) => {
    const { count } = await transaction.question.updateMany({
      where: { id: { in: [...questionIds] }, answeredAt: seenAt, call: callEditScope(access) },
      data: { answer, answeredAt: new Date(), answeredById: access.pattern.accountId },
    });
    if (count < new Set(questionIds).size) throw new AppError("changed-meanwhile");
    const asked = await transaction.question.findMany({
      where: { id: { in: [...questionIds] }, testerId: { not: null }, call: callEditScope(access) },
      orderBy: { createdAt: "asc" },
      select: { testerId: true, asks: true },
    });
    const testers = { id: { in: asked.flatMap(({ testerId }) => testerId ?? []) }, call: callEditScope(access) };
    await writeChangeable(transaction, {
      ...{ kind: "question-answered", testers },
      content: (tester) =>
        answeredContent(tester, {
          asks: asked.filter(({ testerId }) => testerId === tester.testerId).map((own) => own.asks),
          ...{ answer, isChanged: seenAt !== null },
        }),
    });
  });
}

interface Once {
  readonly isStored: (connection: Connection) => Promise<boolean>;
  readonly add: (connection: Connection) => Promise<unknown>;
}

/** Stores what a tester sends unless it is stored already: phones send again when they get no response. */
async function addOnce(access: TesterAccess, { isStored, add }: Once): Promise<void> {
  await inTransaction(async (transaction) => {
    const testers = { some: testerScope(access) };
    const isOpen = await holdOpenCall(transaction, { id: access.callId, testers });
    if (await isStored(transaction)) return;
    if (!isOpen) throw new AppError("closed");
    await add(transaction);
  });
}
