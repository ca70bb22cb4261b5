import "server-only";
import { randomUUID } from "node:crypto";
import { isSameDecision, usedCm, type PatternDocument, type ReadingDecision, type Tester } from "@/engine/pattern";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { holdCall, holdOpenCall, raiseCallVersion } from "@/features/calls/mutations";
import type { Prisma } from "@/generated/prisma/client";
import { inTransaction, type Connection } from "@/server/transaction";
import { AppError } from "@/server/errors";
import { completeReport } from "./complete-report";
import {
  readDecision,
  storedDecision,
  storedReportSchema,
  takeApart,
  type ReportPart,
  type StoredReport,
} from "@/features/calls/report-schema";

interface NewReport {
  readonly tester: Tester;
  readonly name?: string;
  /** The designer's, about them. */
  readonly note?: string;
  /** What was typed, by path in the tester's document. */
  readonly typed: Readonly<Record<string, string>>;
  /** Made once by the sender; the same key again stores nothing. */
  readonly idempotencyKey: string;
}

interface NewReports {
  readonly revision: { readonly revisionId: string; readonly document: PatternDocument };
  readonly reports: readonly NewReport[];
}

/** Few enough to take only milliseconds, so that other requests are served in between. */
const ROWS_AT_ONCE = 100;

/**
 * Adds testers to an open call, each with the first version of a report: all of them or, if anything fails, none.
 *
 * Reports whose submission key is already stored are skipped.
 *
 * @param connection a transaction that it is part of.
 * @throws {AppError} "closed" if the call is closed or the viewer may not edit it.
 */
export async function addReports(
  access: CallAccess,
  { revision, reports }: NewReports,
  connection?: Connection,
): Promise<void> {
  await inTransaction(async (transaction) => {
    if (!(await holdOpenCall(transaction, callEditScope(access)))) throw new AppError("closed");
    const fresh = await notStoredYet(transaction, reports);
    const taken = await transaction.tester.findMany({
      where: { call: openCallEditScope(access) },
      select: { code: true, position: true },
    });
    const decidedById = access.pattern.accountId;
    const rowOf = reportRows({ callId: access.callId, revision, taken, decidedById });
    for (let start = 0; start < fresh.length; start += ROWS_AT_ONCE)
      await insert(transaction, fresh.slice(start, start + ROWS_AT_ONCE).map(rowOf));
    if (fresh.length > 0) await raiseCallVersion(transaction, access.callId);
  }, connection);
}

interface NewDecision {
  /** The tester's id in the document. */
  readonly tester: string;
  readonly part: ReportPart;
  readonly position: number;
  /** Null removes the person's decision: the engine decides again. Another value is used of a reading alone. */
  readonly decision: ReadingDecision | null;
  /** Why another value is used. */
  readonly reason?: string;
}

/**
 * Stores a person's decision on one item of a tester's newest report, which overrules the engine's; the call is then analysed again.
 *
 * @throws {AppError} "not-found" if the call has no such item, or the viewer may not edit it.
 */
export async function decide(
  access: CallAccess,
  { tester, part, position, decision, reason = "" }: NewDecision,
): Promise<void> {
  await inTransaction(async (transaction) => {
    if (!(await holdCall(transaction, access.callId, callEditScope(access)))) throw new AppError("not-found");
    const report = await transaction.report.findFirst({
      where: { tester: { code: tester, call: callEditScope(access) } },
      orderBy: { version: "desc" },
      select: { id: true, document: true, decisions: { where: { part, position } } },
    });
    if (part !== "readings" && usedCm(decision) !== null) throw new AppError("not-found");
    if (report === null || position >= storedReportSchema.parse(report.document)[part].length)
      throw new AppError("not-found");
    const [before] = report.decisions;
    const isSame = isSameDecision(before === undefined ? null : readDecision(before), decision);
    if (isSame && (before?.reason ?? "") === reason) return;
    const reportId_part_position = { reportId: report.id, part, position };
    if (decision === null) await transaction.decision.deleteMany({ where: reportId_part_position });
    else {
      const decided = {
        ...{ ...storedDecision(decision), reason, decidedAt: new Date() },
        decidedById: access.pattern.accountId,
      };
      await transaction.decision.upsert({
        where: { reportId_part_position },
        create: { ...reportId_part_position, ...decided },
        update: decided,
      });
    }
    await raiseCallVersion(transaction, access.callId);
  });
}

async function notStoredYet(transaction: Connection, reports: readonly NewReport[]): Promise<NewReport[]> {
  const sent = reports.map(({ idempotencyKey }) => idempotencyKey);
  const stored = await transaction.$queryRaw<{ key: string }[]>`
    SELECT idempotency_key AS key FROM report WHERE idempotency_key = ANY (${sent}::uuid[])`;
  const keys = new Set(stored.map(({ key }) => key));
  return reports.filter(({ idempotencyKey }) => !keys.has(idempotencyKey));
}

interface TesterRow {
  readonly id: string;
  readonly callId: string;
  readonly code: string;
  readonly position: number;
  readonly size: string;
  readonly note: string;
}

interface ReportRow {
  readonly id: string;
  readonly testerId: string;
  readonly version: number;
  readonly revisionId: string;
  readonly document: StoredReport;
  readonly typed: Readonly<Record<string, string>>;
  readonly idempotencyKey: string;
}

interface ReportRows {
  readonly tester: TesterRow;
  readonly contact?: Prisma.TesterContactCreateManyInput;
  readonly body?: Prisma.TesterBodyCreateManyInput;
  readonly report: ReportRow;
  readonly decisions: readonly Prisma.DecisionCreateManyInput[];
}

interface RowsFor {
  readonly callId: string;
  readonly revision: NewReports["revision"];
  readonly taken: readonly { readonly code: string; readonly position: number }[];
  /** The account that the decisions in the documents are attributed to. */
  readonly decidedById: string;
}

/** The rows of one report after the other, with consecutive positions. */
function reportRows({ callId, revision, taken, decidedById }: RowsFor): (report: NewReport) => ReportRows {
  const decidedAt = new Date();
  const codes = new Set(taken.map(({ code }) => code));
  let position = taken.reduce((most, { position }) => Math.max(most, position), -1);
  return ({ tester, name, note = "", typed, idempotencyKey }) => {
    position += 1;
    const code = freeCode(tester.id, codes);
    codes.add(code);
    const testerId = randomUUID();
    const reportId = randomUUID();
    const { report, decisions } = takeApart(completeReport(tester, revision.document));
    return {
      tester: { id: testerId, callId, code, position, size: tester.size, note },
      ...(name === undefined ? {} : { contact: { testerId, name } }),
      ...(tester.body === undefined ? {} : { body: { testerId, measurements: tester.body } }),
      report: {
        id: reportId,
        testerId,
        version: 1,
        revisionId: revision.revisionId,
        document: report,
        typed,
        idempotencyKey,
      },
      decisions: decisions.map(({ decision, ...at }) => ({
        ...{ reportId, ...at, ...storedDecision(decision), decidedById, decidedAt },
      })),
    };
  };
}

/** The tester's own id, or the first of `id-2`, `id-3` … that the call does not have yet. */
function freeCode(id: string, codes: ReadonlySet<string>): string {
  if (!codes.has(id)) return id;
  for (let number = 2; ; number += 1) {
    const code = `${id.slice(0, 34)}-${number}`;
    if (!codes.has(code)) return code;
  }
}

async function insert(transaction: Connection, rows: readonly ReportRows[]): Promise<void> {
  await insertTesters(
    transaction,
    rows.map(({ tester }) => tester),
  );
  await transaction.testerContact.createMany({ data: rows.flatMap(({ contact }) => contact ?? []) });
  await transaction.testerBody.createMany({ data: rows.flatMap(({ body }) => body ?? []) });
  await insertReports(
    transaction,
    rows.map(({ report }) => report),
  );
  await transaction.decision.createMany({ data: rows.flatMap(({ decisions }) => decisions) });
}

/** As one text: Prisma's `createMany` takes several times as long, and holds up whoever waits. */
async function insertTesters(transaction: Connection, testers: readonly TesterRow[]): Promise<void> {
  await transaction.$executeRaw`
    INSERT INTO tester (id, call_id, code, position, size, note)
    SELECT id, "callId", code, position, size, note
    FROM jsonb_to_recordset(${JSON.stringify(testers)}::jsonb) AS tester (
      id uuid, "callId" uuid, code text, position int, size text, note text)`;
}

/** As `insertTesters` does. */
async function insertReports(transaction: Connection, reports: readonly ReportRow[]): Promise<void> {
  await transaction.$executeRaw`
    INSERT INTO report (id, tester_id, version, revision_id, document, typed, idempotency_key)
    SELECT id, "testerId", version, "revisionId", document, typed, "idempotencyKey"
    FROM jsonb_to_recordset(${JSON.stringify(reports)}::jsonb) AS report (
      id uuid, "testerId" uuid, version int, "revisionId" uuid, document jsonb, typed jsonb, "idempotencyKey" uuid)`;
}
