import "server-only";
import { randomUUID } from "node:crypto";
import { ANSWERS } from "@/features/calls/answer-data";
import { applyAnswers } from "@/features/calls/answers-computed";
import { holdCall, raiseCallVersion } from "@/features/calls/mutations";
import { storedReportSchema } from "@/features/calls/report-schema";
import { AppError } from "@/server/errors";
import type { Connection } from "@/server/transaction";
import { forgetPhotos } from "../photos/withdraw-mutations";
import type { TesterToForget } from "./access";

/**
 * Deletes a tester's name, body measurements and words for good, as part of a transaction. If a report was sent, its numbers
 * stay under the tester's code in the call, and nobody has access to it any more; otherwise nothing stays.
 *
 * @throws {AppError} "not-found" if there is no such tester any more.
 */
export async function forgetTesterIn(transaction: Connection, whose: TesterToForget): Promise<void> {
  const { testerId, callId, tester } = whose;
  const ofThisTester = { tester };
  if (!(await holdCall(transaction, callId, { testers: { some: tester } }))) throw new AppError("not-found");
  await transaction.tester.update({ where: tester, data: { note: "" } });
  await forgetPhotos(transaction, whose);
  await transaction.application.deleteMany({ where: ofThisTester });
  await transaction.question.deleteMany({ where: { ...ofThisTester, answer: null } });
  await transaction.question.updateMany({ where: ofThisTester, data: { testerId: null } });
  if ((await transaction.report.count({ where: ofThisTester })) === 0) {
    await transaction.tester.delete({ where: tester });
    return;
  }
  await transaction.testerContact.deleteMany({ where: ofThisTester });
  await transaction.reward.deleteMany({ where: ofThisTester });
  await transaction.testerBody.deleteMany({ where: ofThisTester });
  await transaction.milestone.deleteMany({ where: ofThisTester });
  await transaction.troubleSpot.deleteMany({ where: ofThisTester });
  await transaction.reportDraft.deleteMany({ where: ofThisTester });
  await transaction.numberQuestion.deleteMany({ where: ofThisTester });
  await anonymise(transaction, testerId);
  await transaction.correctionAnswer.deleteMany({ where: ofThisTester });
  await transaction.correctionRead.deleteMany({ where: ofThisTester });
  await transaction.answerRead.deleteMany({ where: ofThisTester });
  await transaction.message.deleteMany({ where: ofThisTester });
  await transaction.dataView.deleteMany({ where: ofThisTester });
  await transaction.reminder.deleteMany({ where: ofThisTester });
  await transaction.testerHabit.deleteMany({ where: { OR: [ofThisTester, { from: tester }] } });
  await transaction.tester.update({
    where: tester,
    data: {
      ...{ accountId: null, timeZone: null, readRevisionNumber: null, isWornByChild: false, reminders: "all" },
      habitsSince: null,
      ...{ agreementVersion: null, agreedAt: null },
      linkVersion: { increment: 1 },
    },
  });
  // Nothing that was computed with their numbers is shown until it has been computed again.
  const counting = { countsEarlier: true, pattern: { calls: { some: { id: callId } } } };
  await transaction.analysis.deleteMany({ where: { OR: [{ callId }, { call: counting }] } });
  await raiseCallVersion(transaction, callId);
}

/** Replaces all versions of the report by one without the tester's words, with the counts that they answered corrections with; reports are immutable, so it is inserted again. */
async function anonymise(transaction: Connection, testerId: string): Promise<void> {
  const newest = await transaction.report.findFirst({
    where: { testerId },
    orderBy: { version: "desc" },
    include: { decisions: { omit: { reportId: true } }, tester: { select: { correctionAnswers: ANSWERS } } },
  });
  if (newest === null) return;
  const { correctionAnswers } = newest.tester;
  const { fit, yarn, ...report } = applyAnswers(
    storedReportSchema.parse(newest.document),
    correctionAnswers,
    newest.createdAt,
  );
  const mute = fit?.map(({ says: _says, ...rated }) => rated);
  const unnamed = yarn.map(({ label: _label, ...used }) => used);
  await transaction.report.deleteMany({ where: { testerId } });
  await transaction.report.create({
    data: {
      ...{ testerId, version: newest.version, revisionId: newest.revisionId, createdAt: newest.createdAt },
      document: { ...report, yarn: unnamed, ...(mute === undefined ? {} : { fit: mute }) },
      idempotencyKey: randomUUID(),
      // Why another value is used is about them, in their designer's words.
      decisions: { create: newest.decisions.map((decision) => ({ ...decision, reason: "" })) },
    },
  });
}
