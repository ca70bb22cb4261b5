import "server-only";
import { canonicalJson } from "@/engine/pattern";
import { fieldOf, patternAsAnswered, readReport, type ReportContext } from "@/engine/reporting";
import { holdOpenCall } from "@/features/calls/mutations";
import { revisionSelect, toRevision } from "@/features/patterns/data";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { readDraft } from "../report/data";
import { lockOpenTester, reportingScope, whyClosed } from "../report/draft-mutations";
import { mayMove } from "./may-move";

/** Ids of two revisions. */
interface Move {
  /** The one that the tester saw as theirs. */
  readonly from: string;
  readonly to: string;
}

/**
 * Moves a tester who has sent nothing but a swatch to a newer revision of their pattern. What they typed stays as it is, and fields that
 * they left blank follow the new revision. Their word that they followed the pattern was about the old one, so they are
 * asked again where a count or a length of their size differs.
 *
 * @throws {AppError} "closed" if the call is closed, the tester has stopped or has sent more than a swatch; "changed-meanwhile" if they
 *   work from yet another revision by now; "not-found" if the pattern has no such newer revision, or it lacks their size.
 */
export async function moveToRevision(access: TesterAccess, { from, to }: Move): Promise<void> {
  await inTransaction(async (transaction) => {
    const testers = { some: { ...testerScope(access), stoppedAt: null } };
    if (!(await holdOpenCall(transaction, { id: access.callId, testers }))) throw await whyClosed(transaction, access);
    await lockOpenTester(transaction, access);
    const { revisionId, sent, typed, context, toldCounts } = await readDraft(access, transaction);
    if (revisionId === to) return;
    if (!mayMove({ sent })) throw new AppError("closed", SENT);
    if (revisionId !== from) throw new AppError("changed-meanwhile", MOVED);
    const newer = await newerPattern(transaction, { access, from, to });
    const next = { ...context, pattern: patternAsAnswered(newer, context.size, toldCounts) };
    if (!next.pattern.sizes.some(({ id }) => id === context.size)) throw new AppError("not-found", NO_SIZE);
    await transaction.tester.update({ where: reportingScope(access), data: { revisionId: to } });
    if (typed[fieldOf.asWritten] !== "yes" || haveSameNumbers(context, next)) return;
    const { [fieldOf.asWritten]: _confirmed, ...stays } = typed;
    await transaction.reportDraft.updateMany({
      where: { tester: reportingScope(access) },
      data: { typed: stays, version: { increment: 1 }, updatedAt: new Date() },
    });
  });
}

const SENT = "You have sent a report about your garment, so it stays with the revision that you worked from.";
const MOVED = "You work from another revision by now. Reload the page to see it.";
const NO_SIZE = "The newer revision does not have your size, so you cannot move to it.";

async function newerPattern(transaction: Connection, { access, from, to }: Move & { readonly access: TesterAccess }) {
  const pattern = { calls: { some: { id: access.callId, testers: { some: testerScope(access) } } } };
  const rows = await transaction.revision.findMany({
    where: { id: { in: [from, to] }, pattern },
    orderBy: { number: "asc" },
    select: revisionSelect,
  });
  const newest = rows.at(-1);
  if (rows.length < 2 || newest?.id !== to) throw new AppError("not-found");
  return toRevision(newest).document;
}

/** Whoever follows either revision works the same counts and lengths: those of a report in which nothing is typed. */
function haveSameNumbers(before: ReportContext, after: ReportContext): boolean {
  const numbers = (context: ReportContext) => {
    const { worked, workedLengths } = readReport({}, context).report;
    return canonicalJson([worked ?? {}, workedLengths ?? {}]);
  };
  return numbers(before) === numbers(after);
}
