import "server-only";
import { ownValue } from "@/engine/pattern";
import { fieldOf, type CorrectionAnswer, type TypedReport } from "@/engine/reporting";
import { numberChangesSchema, workedCountsSchema } from "@/features/calls/correction-schema";
import { holdOpenCall, raiseCallVersion } from "@/features/calls/mutations";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { readDraft, type ReportInHand } from "../report/data";
import { lockOpenTester, storeTyped, whyClosed } from "../report/draft-mutations";
import { ofSize } from "./correction-data";
import { mayAnswer } from "./may-answer";

interface NewAnswer {
  readonly correctionId: string;
  readonly answer: CorrectionAnswer;
}

/**
 * A tester says how they deal with a correction of their size. The same answer again changes nothing; another one takes
 * back what they confirmed to have worked.
 *
 * @throws {AppError} "not-found" if no such correction concerns them; "closed" if the call is closed, they have stopped or
 *   have sent all of their report.
 */
export async function answerCorrection(access: TesterAccess, { correctionId, answer }: NewAnswer): Promise<void> {
  const { testerId } = access;
  await inTransaction(async (transaction) => {
    const inHand = await holdForAnswer(transaction, access);
    const { counts, stored } = await concerning(transaction, { access, correctionId, inHand });
    if (stored?.answer === answer) return;
    const data = { answer, worked: Prisma.DbNull, answeredAt: new Date() };
    const where = { testerId_correctionId: { testerId, correctionId } };
    await transaction.correctionAnswer.upsert({ where, create: { testerId, correctionId, ...data }, update: data });
    if (stored?.worked) await storeWithout(transaction, { access, inHand, worked: stored.worked });
    if (counts.length > 0 && inHand.sent !== null) await raiseCallVersion(transaction, access.callId);
  });
}

interface Confirmed {
  readonly correctionId: string;
  /** Count → the number that they really worked, of counts that the correction changes in their size. */
  readonly worked: Readonly<Record<string, number>>;
}

/**
 * A tester who keeps an old number confirms what they worked. It stands in their report as if they had typed it.
 *
 * @throws {AppError} as `answerCorrection`; "not-found" also if they do not keep it, or the correction lacks such a count.
 */
export async function confirmWorked(access: TesterAccess, { correctionId, worked }: Confirmed): Promise<void> {
  const { testerId } = access;
  await inTransaction(async (transaction) => {
    const inHand = await holdForAnswer(transaction, access);
    const { counts, stored } = await concerning(transaction, { access, correctionId, inHand });
    const isWhole = counts.length > 0 && counts.every((count) => ownValue(worked, count) !== undefined);
    if (stored?.answer !== "kept" || !isWhole) throw new AppError("not-found");
    const numbers = Object.fromEntries(counts.map((count) => [count, ownValue(worked, count) ?? 0]));
    await transaction.correctionAnswer.update({
      where: { testerId_correctionId: { testerId, correctionId } },
      data: { worked: numbers, answeredAt: new Date() },
    });
    const typed = Object.entries(numbers).map(([count, number]) => [fieldOf.worked(count), String(number)]);
    await storeTyped(transaction, access, { ...inHand.typed, ...Object.fromEntries(typed) });
    if (inHand.sent !== null) await raiseCallVersion(transaction, access.callId);
  });
}

/** Locks the call and the tester, in this order, and reads the report so far. */
async function holdForAnswer(transaction: Connection, access: TesterAccess): Promise<ReportInHand> {
  const testers = { some: { ...testerScope(access), stoppedAt: null } };
  if (!(await holdOpenCall(transaction, { id: access.callId, testers }))) throw await whyClosed(transaction, access);
  await lockOpenTester(transaction, access);
  const inHand = await readDraft(access, transaction);
  if (!mayAnswer(inHand)) throw new AppError("closed", FINISHED);
  return inHand;
}

const FINISHED = "You have sent all of your report, so your answer stays as it is.";

interface Asked {
  readonly access: TesterAccess;
  readonly correctionId: string;
  readonly inHand: ReportInHand;
}

/** The counts that a correction changes in a tester's size, and what they have answered so far. */
async function concerning(transaction: Connection, { access, correctionId, inHand }: Asked) {
  const { size } = inHand.context;
  const row = await transaction.correction.findFirst({
    where: {
      id: correctionId,
      call: { testers: { some: testerScope(access) } },
      ...ofSize(size),
    },
    select: {
      numbers: true,
      answers: { where: { testerId: access.testerId }, select: { answer: true, worked: true } },
    },
  });
  if (row === null) throw new AppError("not-found");
  const [stored] = row.answers;
  return {
    counts: numberChangesSchema.parse(row.numbers).flatMap((change) => (change.size === size ? [change.count] : [])),
    stored: stored && {
      answer: stored.answer,
      worked: stored.worked === null ? null : workedCountsSchema.parse(stored.worked),
    },
  };
}

interface TakenBack {
  readonly access: TesterAccess;
  readonly inHand: ReportInHand;
  readonly worked: Readonly<Record<string, number>>;
}

/** Removes numbers from the draft that stand there only because they were confirmed. */
async function storeWithout(transaction: Connection, { access, inHand, worked }: TakenBack): Promise<void> {
  const isConfirmed = (field: string, text: string) =>
    Object.entries(worked).some(([count, number]) => field === fieldOf.worked(count) && text === String(number));
  const left: TypedReport = Object.fromEntries(
    Object.entries(inHand.typed).filter(([field, text]) => !isConfirmed(field, text)),
  );
  await storeTyped(transaction, access, left);
}
