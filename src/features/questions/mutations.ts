import "server-only";
import type { Place } from "@/engine/instructions";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { holdOpenCall } from "@/features/calls/mutations";
import { testerScope, type TesterAccess } from "@/features/testers/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";

interface AtPlace {
  /** The revision that she reads, in which the place stands. */
  readonly revisionId: string;
  readonly place: Place;
  /** Made once by whoever sends; the same key again stores nothing. */
  readonly submissionKey: string;
}

/**
 * Asks at a place of the instructions.
 *
 * @throws {AppError} "closed" where the call is closed or she is not its tester any more.
 */
export async function askQuestion(
  access: TesterAccess,
  { asks, ...at }: AtPlace & { readonly asks: string },
): Promise<void> {
  const { testerId, callId } = access;
  await addOnce(access, {
    isStored: async ({ question }) =>
      (await question.count({ where: { submissionKey: at.submissionKey, testerId } })) > 0,
    add: ({ question }) => question.create({ data: { ...at, place: { ...at.place }, asks, testerId, callId } }),
  });
}

/**
 * Tells of a place where she stumbled.
 *
 * @throws {AppError} "closed" where the call is closed or she is not its tester any more.
 */
export async function tellTrouble(
  access: TesterAccess,
  { happened, did, ...at }: AtPlace & { readonly happened: string; readonly did: string },
): Promise<void> {
  const { testerId } = access;
  await addOnce(access, {
    isStored: async ({ troubleSpot }) =>
      (await troubleSpot.count({ where: { submissionKey: at.submissionKey, testerId } })) > 0,
    add: ({ troubleSpot }) => troubleSpot.create({ data: { ...at, place: { ...at.place }, happened, did, testerId } }),
  });
}

/** Takes back what she has told of a place; what is gone already needs nothing. */
export async function takeBackTrouble(access: TesterAccess, troubleId: string): Promise<void> {
  await database().troubleSpot.deleteMany({ where: { id: troubleId, tester: testerScope(access) } });
}

/** Takes back her question, as long as nobody has answered it: an answer is for all testers. */
export async function takeBackQuestion(access: TesterAccess, questionId: string): Promise<void> {
  await database().question.deleteMany({ where: { id: questionId, answer: null, tester: testerScope(access) } });
}

interface Answer {
  readonly questionIds: readonly string[];
  readonly answer: string;
  /** When the answer that she read and changes was given; null where she read none. */
  readonly seenAt: Date | null;
}

/**
 * Answers questions once for all testers, or changes the answer that they have. All of them or none.
 *
 * @throws {AppError} "changed-meanwhile" where one has another answer than she read, is taken back, or is not of a call
 * that is hers to edit.
 */
export async function answerQuestions(access: CallAccess, { questionIds, answer, seenAt }: Answer): Promise<void> {
  await inTransaction(async (transaction) => {
    const { count } = await transaction.question.updateMany({
      where: { id: { in: [...questionIds] }, answeredAt: seenAt, call: callEditScope(access) },
      data: { answer, answeredAt: new Date(), answeredById: access.pattern.accountId },
    });
    if (count < new Set(questionIds).size) throw new AppError("changed-meanwhile");
  });
}

interface Once {
  readonly isStored: (connection: Connection) => Promise<boolean>;
  readonly add: (connection: Connection) => Promise<unknown>;
}

/** Adds what a tester sends unless it is there already, for a phone sends again what it has no answer to. */
async function addOnce(access: TesterAccess, { isStored, add }: Once): Promise<void> {
  await inTransaction(async (transaction) => {
    const testers = { some: testerScope(access) };
    const isOpen = await holdOpenCall(transaction, { id: access.callId, testers });
    if (await isStored(transaction)) return;
    if (!isOpen) throw new AppError("closed");
    await add(transaction);
  });
}
