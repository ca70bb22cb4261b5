import "server-only";
import { randomUUID } from "node:crypto";
import { holdCall, raiseCallVersion } from "@/features/calls/mutations";
import { storedReportSchema } from "@/features/reports/schema";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { testerScope, type TesterAccess } from "./access";

/**
 * Deletes what a tester's name, body and words stand in, for good. Where she has sent a report its numbers stay under her
 * number in the call, and nobody can come in to it any more; where she has not, nothing of her stays.
 *
 * @throws {AppError} "not-found" where she is this tester no more.
 */
export async function forgetTester(access: TesterAccess): Promise<void> {
  const { testerId } = access;
  const hers = { tester: testerScope(access) };
  await inTransaction(async (transaction) => {
    const ofTester = { testers: { some: testerScope(access) } };
    if (!(await holdCall(transaction, access.callId, ofTester))) throw new AppError("not-found");
    await transaction.tester.update({ where: testerScope(access), data: { note: "" } });
    await transaction.application.deleteMany({ where: hers });
    await transaction.question.deleteMany({ where: { ...hers, answer: null } });
    await transaction.question.updateMany({ where: hers, data: { testerId: null } });
    if ((await transaction.report.count({ where: hers })) === 0) {
      await transaction.tester.delete({ where: testerScope(access) });
      return;
    }
    await transaction.testerContact.deleteMany({ where: hers });
    await transaction.testerBody.deleteMany({ where: hers });
    await transaction.milestone.deleteMany({ where: hers });
    await transaction.troubleSpot.deleteMany({ where: hers });
    await transaction.reportDraft.deleteMany({ where: hers });
    await keepNumbersAlone(transaction, testerId);
    await transaction.tester.update({
      where: testerScope(access),
      data: { accountId: null, timeZone: null, linkVersion: { increment: 1 } },
    });
    // Nothing that was computed with their numbers is shown until it has been computed again.
    await transaction.analysis.deleteMany({ where: { callId: access.callId } });
    await raiseCallVersion(transaction, access.callId);
  });
}

/** Her report in one version, without what she wrote; a report never changes, so that it is stored anew. */
async function keepNumbersAlone(transaction: Connection, testerId: string): Promise<void> {
  const newest = await transaction.report.findFirst({
    where: { testerId },
    orderBy: { version: "desc" },
    include: { decisions: { omit: { reportId: true } } },
  });
  if (newest === null) return;
  const { fit, ...report } = storedReportSchema.parse(newest.document);
  const mute = fit?.map(({ says: _says, ...told }) => told);
  await transaction.report.deleteMany({ where: { testerId } });
  await transaction.report.create({
    data: {
      ...{ testerId, version: newest.version, revisionId: newest.revisionId, createdAt: newest.createdAt },
      document: { ...report, ...(mute === undefined ? {} : { fit: mute }) },
      submissionKey: randomUUID(),
      decisions: { create: newest.decisions },
    },
  });
}
