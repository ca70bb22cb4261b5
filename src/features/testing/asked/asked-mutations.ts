import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { fieldOf, keysOf, readReport, type TypedReport } from "@/engine/reporting";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import type { StoredReport } from "@/features/calls/report-schema";
import { toRevision } from "@/features/patterns/data";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { formatLength } from "@/ui/format-length";
import type { TesterAccess } from "../home/access";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { NEWEST_REPORT, sentReport, textsSchema } from "../report/data";
import { lockOpenTester, reportingScope } from "../report/draft-mutations";
import { storedPositions } from "../report/stored-positions";
import { aboutField } from "./about-field";
import { askedContent } from "./asked-copy";
import type { AskedNumber } from "./asked-schema";

interface NewQuestion {
  readonly testerId: string;
  readonly number: AskedNumber;
  readonly asks: string;
  /** Made once for the form; the same key again stores nothing. */
  readonly idempotencyKey: string;
}

/**
 * The designer asks a tester about one number of their newest report. It waits at that field of theirs until they answer.
 *
 * @throws {AppError} "closed" if the call is closed; "not-found" if the report has no such number, or the tester no pages;
 *   "not-allowed" if a question about it waits already.
 */
export async function askAboutNumber(
  access: CallAccess,
  { testerId, number, asks, idempotencyKey }: NewQuestion,
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const row = await transaction.tester.findFirst({
      where: { id: testerId, call: openCallEditScope(access), acceptedAt: { not: null }, stoppedAt: null },
      select: { unit: true, reports: NEWEST_REPORT, reportDraft: { select: { sent: true } } },
    });
    const [report] = row?.reports ?? [];
    if (row === null || report === undefined) throw new AppError("not-found");
    const { unit } = row;
    const reader = { unit, formatLength: (cm: number) => formatLength(cm, unit) };
    const revision = toRevision(report.revision);
    const sent = sentReport(report, { context: reader, revision });
    const typed = row.reportDraft?.sent == null ? sent.typed : textsSchema.parse(row.reportDraft.sent);
    const context = { ...reader, pattern: revision.document, size: sent.report.size };
    const read = readReport(typed, context);
    const field = fieldOfNumber(number, { read, stored: sent.report, typed, pattern: revision.document });
    if (field === null) throw new AppError("not-found");
    const known = await transaction.numberQuestion.count({ where: { idempotencyKey } });
    if (known > 0) return;
    const waiting = await transaction.numberQuestion.count({ where: { testerId, field, answeredAt: null } });
    if (waiting > 0) throw new AppError("not-allowed", "You have asked about this number already.");
    const about = aboutField(field, typed);
    const askedById = access.pattern.accountId;
    await transaction.numberQuestion.create({ data: { testerId, field, about, asks, askedById, idempotencyKey } });
    const testers = { id: testerId, call: openCallEditScope(access) };
    await writeChangeable(transaction, {
      ...{ kind: "number-asked", testers },
      content: (tester) => askedContent(tester, { about, asks }),
    });
  });
}

interface NumberIn {
  readonly read: ReturnType<typeof readReport>;
  readonly stored: StoredReport;
  readonly typed: TypedReport;
  readonly pattern: PatternDocument;
}

/** The tester's own field of a number, by which they find it; null where the report has none. */
function fieldOfNumber(number: AskedNumber, { read, stored, typed, pattern }: NumberIn): string | null {
  if ("measurement" in number) {
    const { measurement } = number;
    if (!pattern.measurements.some(({ id }) => id === measurement)) return null;
    return fieldOf.reading(measurement, keysOf(typed, { reading: measurement }).at(-1) ?? "1", "value");
  }
  if ("count" in number) return Object.hasOwn(stored.worked ?? {}, number.count) ? fieldOf.worked(number.count) : null;
  const { part, position } = number;
  const index = storedPositions(read.report, stored)[part].indexOf(position);
  const key = read.keys[part][index];
  if (key === undefined) return null;
  if (part === "swatches") return fieldOf.swatch(key, "stitches");
  const measurement = read.report.readings[index]?.measurement;
  return measurement === undefined ? null : fieldOf.reading(measurement, key, "value");
}

/**
 * The designer withdraws a question while it is unanswered; the tester no longer finds it anywhere.
 *
 * @throws {AppError} "closed" if the call is closed; "changed-meanwhile" if it is answered, withdrawn or another call's.
 */
export async function withdrawQuestion(access: CallAccess, questionId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const { count } = await transaction.numberQuestion.deleteMany({
      where: { id: questionId, tester: { call: openCallEditScope(access) }, answeredAt: null },
    });
    if (count === 0) throw new AppError("changed-meanwhile", ANSWERED_OR_WITHDRAWN);
  });
}

/**
 * A tester answers that a number is right as it is.
 *
 * @throws {AppError} "closed" if their test is; "not-found" if it is no question of theirs, or answered already.
 */
export async function answerAboutNumber(
  access: TesterAccess,
  { questionId, answer }: { readonly questionId: string; readonly answer: string },
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenTester(transaction, access);
    const { count } = await transaction.numberQuestion.updateMany({
      where: { id: questionId, tester: reportingScope(access), answeredAt: null },
      data: { answer, answeredAt: new Date() },
    });
    if (count === 0) throw new AppError("not-found", ANSWERED_OR_WITHDRAWN);
  });
}

const ANSWERED_OR_WITHDRAWN = "This question was answered or withdrawn in the meantime. Reload the page.";

/** Sending a report answers the questions about numbers that it changes. @param typed the fields as they are sent. */
export async function answerByChange(
  transaction: Connection,
  { testerId, typed }: { readonly testerId: string; readonly typed: TypedReport },
): Promise<void> {
  const waiting = await transaction.numberQuestion.findMany({
    where: { testerId, answeredAt: null },
    select: { id: true, field: true, about: true },
  });
  for (const { id, field, about } of waiting) {
    const changedTo = aboutField(field, typed);
    if (changedTo === about) continue;
    await transaction.numberQuestion.updateMany({
      where: { id, testerId, answeredAt: null },
      data: { changedTo, answeredAt: new Date() },
    });
  }
}

/** The designer or an editor has read a tester's answer. @throws {AppError} "not-found" if there is no such answer. */
export async function markAnswerSeen(access: CallAccess, questionId: string): Promise<void> {
  const { count } = await database().numberQuestion.updateMany({
    where: { id: questionId, tester: { call: callEditScope(access) }, answeredAt: { not: null } },
    data: { seenAt: new Date() },
  });
  if (count === 0) throw new AppError("not-found");
}
