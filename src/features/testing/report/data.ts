import "server-only";
import { z } from "zod";
import {
  answeredCounts,
  patternAsAnswered,
  typedOfReport,
  type ReportContext,
  type TypedReport,
} from "@/engine/reporting";
import { patternOfPieces, type PatternDocument } from "@/engine/pattern";
import { ANSWERS } from "@/features/calls/answer-data";
import { toAnswers } from "@/features/calls/answers-computed";
import { revisionSelect, revisionTold, toldOf, withDocument, type Revision } from "@/features/patterns/data";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Connection } from "@/server/transaction";
import { formatLength } from "@/ui/format-length";
import { SHOWN_TO_TESTER, toNumberQuestion, type NumberQuestion } from "../asked/asked-data";
import { changedFields } from "./changed-fields";
import { storedReportSchema, type StoredReport } from "@/features/calls/report-schema";

/** A version of a tester's report as it was sent. */
export interface SentReport {
  readonly reportId: string;
  readonly version: number;
  readonly sentAt: Date;
  readonly revisionId: string;
  readonly report: StoredReport;
  /** The typed texts of the report's numbers, by path in it. */
  readonly typedTexts: TypedReport;
  /** The same as fields, from which an amendment starts. */
  readonly typed: TypedReport;
}

/** A tester's report so far: the draft, and what was sent. */
export interface ReportInHand {
  /** Its pattern is the revision, or the pieces of it that are tested, with the counts of their size that their answers to corrections tell. */
  readonly context: ReportContext;
  /** The revision that the tester works from. */
  readonly revisionId: string;
  /** The same as it was saved. */
  readonly savedPattern: PatternDocument;
  /** Count → number by their answers to corrections; null: that of their revision. */
  readonly toldCounts: ReadonlyMap<string, number | null>;
  /** Field → text: the draft, else what was sent. */
  readonly typed: TypedReport;
  /** Incremented by each change of the draft; 0 without a draft. */
  readonly version: number;
  /** Null if nothing was sent. */
  readonly sent: SentReport | null;
  /** Fields that have changed since the newest version was sent; none if nothing was sent. */
  readonly changed: readonly string[];
  /** Null while it can be changed; else why not: the call is closed, the tester has stopped, or the designer ended their test. */
  readonly ended: "closed" | "stopped" | "ended" | null;
  /** What the designer asks about its numbers, and answers that they have not read yet. */
  readonly asked: readonly NumberQuestion[];
}

export const textsSchema = z.record(z.string(), z.string());

/**
 * Reads a tester's report so far.
 *
 * @param connection a transaction that it is read in.
 * @throws {AppError} "not-found" if access was lost in the meantime, or the tester has no revision.
 */
export async function readDraft(access: TesterAccess, connection: Connection = database()): Promise<ReportInHand> {
  const row = await connection.tester.findUnique({ where: testerScope(access), select: IN_HAND });
  return await toReportInHand(access, row, connection);
}

/** The same of a row that was read already. */
export async function toReportInHand(
  access: TesterAccess,
  row: Prisma.TesterGetPayload<{ select: typeof IN_HAND }> | null,
  connection: Connection = database(),
): Promise<ReportInHand> {
  const [report] = row?.reports ?? [];
  const followed = row?.revision ?? report?.revision;
  if (row == null || followed === undefined) throw new AppError("not-found");
  const revision = await ownRevision(access, followed, connection);
  const { revisionId, document: savedPattern } = revision;
  const reported = async (report: { readonly revision: typeof followed }) =>
    report.revision.id === revisionId ? revision : await ownRevision(access, report.revision, connection);
  const { unit, size } = row;
  const toldCounts = answeredCounts(size, toAnswers(row.correctionAnswers));
  const pattern = patternOfPieces(patternAsAnswered(savedPattern, size, toldCounts), row.call.pieces);
  const context: ReportContext = { pattern, size, unit, formatLength: (cm) => formatLength(cm, unit) };
  const sent = report === undefined ? null : sentReport(report, { context, revision: await reported(report) });
  const typed = row.reportDraft === null ? (sent?.typed ?? {}) : textsSchema.parse(row.reportDraft.typed);
  const asSent = row.reportDraft?.sent == null ? sent?.typed : textsSchema.parse(row.reportDraft.sent);
  return {
    ...{ context, revisionId, savedPattern, toldCounts, sent, typed },
    changed: asSent === undefined ? [] : changedFields(asSent, typed),
    version: row.reportDraft?.version ?? 0,
    asked: row.numberQuestions.map(toNumberQuestion),
    ended: whyEnded(row),
  };
}

/** A revision that the tester follows, or reported on. */
async function ownRevision(
  access: TesterAccess,
  row: Parameters<typeof toldOf>[0],
  connection: Connection,
): Promise<Revision> {
  const tester = testerScope(access);
  const scope = { OR: [{ testers: { some: tester } }, { reports: { some: { tester } } }] };
  return await withDocument(toldOf(row), scope, connection);
}

function whyEnded(row: {
  readonly stoppedAt: Date | null;
  readonly stoppedByDesigner: boolean;
  readonly call: { readonly status: string };
}): ReportInHand["ended"] {
  if (row.stoppedAt !== null) return row.stoppedByDesigner ? "ended" : "stopped";
  return row.call.status === "closed" ? "closed" : null;
}

/** The newest version of a tester's report, as `sentReport` reads it. */
export const NEWEST_REPORT = {
  orderBy: { version: "desc" as const },
  take: 1,
  select: {
    id: true,
    version: true,
    createdAt: true,
    document: true,
    typed: true,
    revision: { select: revisionSelect },
  },
};

/** What `toReportInHand` reads of a tester's row. */
export const IN_HAND = {
  size: true,
  unit: true,
  stoppedAt: true,
  stoppedByDesigner: true,
  revision: { select: revisionTold },
  call: { select: { status: true, pieces: true } },
  reportDraft: { select: { typed: true, sent: true, version: true } },
  reports: { ...NEWEST_REPORT, select: { ...NEWEST_REPORT.select, revision: { select: revisionTold } } },
  numberQuestions: SHOWN_TO_TESTER,
  correctionAnswers: ANSWERS,
} satisfies Prisma.TesterSelect;

interface ReportRow {
  readonly id: string;
  readonly version: number;
  readonly createdAt: Date;
  readonly document: unknown;
  readonly typed: unknown;
}

/** @param given the revision is the one that the report followed. */
export function sentReport(
  row: ReportRow,
  given: { readonly context: Pick<ReportContext, "unit" | "formatLength">; readonly revision: Revision },
): SentReport {
  const { unit, formatLength } = given.context;
  const { revisionId, document: pattern } = given.revision;
  const report = storedReportSchema.parse(row.document);
  const typedTexts = textsSchema.parse(row.typed);
  const typed = typedOfReport({ report, typed: typedTexts }, { pattern, size: report.size, unit, formatLength });
  const { id: reportId, version, createdAt: sentAt } = row;
  return { reportId, version, sentAt, revisionId, report, typedTexts, typed };
}
