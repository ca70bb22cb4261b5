import "server-only";
import { canonicalJson } from "@/engine/pattern";
import { readReport } from "@/engine/reporting";
import { holdOpenCall, raiseCallVersion } from "@/features/calls/mutations";
import { testerScope, type TesterAccess } from "@/features/testers/access";
import { AppError } from "@/server/errors";
import { submissionKey } from "@/server/submission-key";
import { inTransaction, type Connection } from "@/server/transaction";
import { carriedDecisions } from "./carried-decisions";
import { readDraft, type SentReport } from "./data";
import { reportingScope, whyNot } from "./draft-mutations";
import { storedReportSchema, type StoredReport } from "./schema";

/**
 * Sends a tester's draft as the next version of her report, and has her call reckoned with it. A draft that says the same
 * as the newest version is stored once, however often it is sent.
 *
 * @param seen the draft's version that she looked through.
 * @returns the number of the version that holds what she sent.
 * @throws {AppError} "closed" where the call is closed or she has stopped; "changed-meanwhile" where the draft is not the
 *   one that she saw; "not-found" where she is this tester no more; "nothing-to-send".
 */
export async function sendReport(access: TesterAccess, seen: number): Promise<{ version: number }> {
  return await inTransaction(async (transaction) => {
    const testers = { some: { ...testerScope(access), stoppedAt: null } };
    if (!(await holdOpenCall(transaction, { id: access.callId, testers }))) throw await whyNot(transaction, access);
    const { context, revisionId, typed: fields, version: draft, sent } = await readDraft(access, transaction);
    if (draft !== seen) throw new AppError("changed-meanwhile", CHANGED);
    // What is stored as the report differs from the fields: in what is filled in for them, and what could not be read.
    await transaction.reportDraft.updateMany({
      where: { tester: reportingScope(access) },
      data: { sent: fields },
    });
    const read = readReport(fields, context);
    const report = storedReportSchema.parse(read.report);
    const content = canonicalJson({ report, typed: read.typed, revisionId });
    if (sent !== null && content === contentOf(sent)) return { version: sent.version };
    const isEmpty = canonicalJson(report) === canonicalJson(readReport({}, context).report);
    if (isEmpty && sent === null) throw new AppError("nothing-to-send");
    const version = (sent?.version ?? 0) + 1;
    await transaction.report.create({
      data: {
        ...{ testerId: access.testerId, version, revisionId, typed: read.typed },
        document: report,
        submissionKey: submissionKey(access.testerId, `${version} ${content}`),
        decisions: { create: sent === null ? [] : await decisionsFor(transaction, { sent, report }) },
      },
    });
    await raiseCallVersion(transaction, access.callId);
    return { version };
  });
}

const CHANGED =
  "Something in your report was changed since this page was opened. Look through it once more, then send.";

function contentOf({ report, kept, revisionId }: SentReport): string {
  return canonicalJson({ report, typed: kept, revisionId });
}

/** People's words on what stands in the new version as it stood in the last. */
async function decisionsFor(
  transaction: Connection,
  { sent, report }: { readonly sent: SentReport; readonly report: StoredReport },
) {
  const decisions = await transaction.decision.findMany({
    where: { reportId: sent.reportId },
    omit: { reportId: true },
  });
  return carriedDecisions(decisions, { from: sent.report, to: report });
}
