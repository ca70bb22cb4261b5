import "server-only";
import { canonicalJson } from "@/engine/pattern";
import { fieldOf, readReport, type ReportContext, type TypedReport } from "@/engine/reporting";
import { holdOpenCall, raiseCallVersion } from "@/features/calls/mutations";
import { testerScope, type TesterAccess } from "../../home/access";
import { AppError } from "@/server/errors";
import { idempotencyKey } from "@/server/idempotency-key";
import { inTransaction, type Connection } from "@/server/transaction";
import { answerByChange } from "../../asked/asked-mutations";
import { writeChangeable } from "../../messages/changeable-mail-mutations";
import { carriedDecisions } from "../carried-decisions";
import { readDraft, type SentReport } from "../data";
import { reportingScope, whyClosed } from "../draft-mutations";
import { holdsSwatchAlone } from "../holds-swatch-alone";
import { receivedContent } from "./received-copy";
import { storedReportSchema, type StoredReport } from "@/features/calls/report-schema";

/**
 * Sends a tester's draft as the next version of the report, and queues an analysis of the call. A draft that equals the
 * newest version is stored once, however often it is sent.
 *
 * @param seen the version of the draft that was reviewed.
 * @returns the number of the version that holds what was sent.
 * @throws {AppError} "closed" if the call is closed or the tester has stopped; "changed-meanwhile" if the draft is not the
 *   one that was reviewed; "not-found" if access was lost in the meantime; "nothing-to-send".
 */
export async function sendReport(access: TesterAccess, seen: number): Promise<{ version: number }> {
  return await inTransaction(async (transaction) => {
    const testers = { some: { ...testerScope(access), stoppedAt: null } };
    if (!(await holdOpenCall(transaction, { id: access.callId, testers }))) throw await whyClosed(transaction, access);
    const {
      context,
      revisionId,
      toldCounts,
      typed: fields,
      version: draft,
      sent,
    } = await readDraft(access, transaction);
    if (draft !== seen) throw new AppError("changed-meanwhile", CHANGED);
    // The stored report differs from the fields: defaults are filled in, and what could not be read is left out.
    await answerByChange(transaction, { testerId: access.testerId, typed: fields });
    await transaction.reportDraft.updateMany({
      where: { tester: reportingScope(access) },
      data: { sent: fields },
    });
    const read = readReport(fields, context);
    const report = storedReportSchema.parse({
      ...read.report,
      ...(await shownIn(transaction, access, context)),
      ...(toldCounts.size === 0 ? {} : { confirmedCounts: [...toldCounts.keys()] }),
    });
    const content = canonicalJson({ report, typed: read.typed, revisionId });
    if (sent !== null && content === contentOf(sent)) return { version: sent.version };
    const isEmpty = canonicalJson(read.report) === canonicalJson(emptyReport(fields, context));
    if (isEmpty && sent === null) throw new AppError("nothing-to-send");
    const version = (sent?.version ?? 0) + 1;
    await transaction.report.create({
      data: {
        ...{ testerId: access.testerId, version, revisionId, typed: read.typed },
        document: report,
        idempotencyKey: idempotencyKey(access.testerId, `${version} ${content}`),
        decisions: { create: sent === null ? [] : await decisionsFor(transaction, { sent, report }) },
      },
    });
    await raiseCallVersion(transaction, access.callId);
    const isSwatch = holdsSwatchAlone(fields);
    // Once for the swatch and once for the report, however often it is changed.
    if (sent === null || (holdsSwatchAlone(sent.typed) && !isSwatch))
      await writeChangeable(transaction, {
        ...{ kind: "report-received", changedAs: isSwatch ? "swatch-received" : "report-received" },
        testers: testerScope(access),
        content: (tester) => receivedContent(tester, { isSwatch }),
      });
    return { version };
  });
}

/** Which numbers the text showed, where there is a text. */
async function shownIn(transaction: Connection, access: TesterAccess, { pattern }: ReportContext) {
  if ((pattern.instructions ?? "").trim() === "") return {};
  return await transaction.tester.findUniqueOrThrow({ where: testerScope(access), select: { sizesShown: true } });
}

/** What is read where nothing but the word that they followed the pattern is typed. */
function emptyReport(fields: TypedReport, context: ReportContext): StoredReport {
  const { asWritten } = fieldOf;
  return storedReportSchema.parse(readReport({ [asWritten]: fields[asWritten] ?? "" }, context).report);
}

const CHANGED = "Your report has changed since you opened this page. Review it again, then send.";

function contentOf({ report, typedTexts, revisionId }: SentReport): string {
  return canonicalJson({ report, typed: typedTexts, revisionId });
}

/** Decisions of people on items that the new version holds unchanged. */
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
