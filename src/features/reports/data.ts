import "server-only";
import { z } from "zod";
import { typedOfReport, type ReportContext, type TypedReport } from "@/engine/reporting";
import { revisionSelect, toRevision, type Revision } from "@/features/patterns/data";
import { testerScope, type TesterAccess } from "@/features/testers/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Connection } from "@/server/transaction";
import { formatLength } from "@/ui/format-length";
import { changedFields } from "./changed-fields";
import { storedReportSchema, type StoredReport } from "./schema";

/** A version of a tester's report as she sent it. */
export interface SentReport {
  readonly reportId: string;
  readonly version: number;
  readonly sentAt: Date;
  readonly revisionId: string;
  readonly report: StoredReport;
  /** Texts beside the report's numbers, by path in it. */
  readonly kept: TypedReport;
  /** The same as fields, from which an amendment starts. */
  readonly typed: TypedReport;
}

/** A tester's report as it stands: what she has typed so far, and what she has sent. */
export interface ReportInHand {
  readonly context: ReportContext;
  /** The revision that she works from. */
  readonly revisionId: string;
  /** Field → text: her draft, else what she has sent. */
  readonly typed: TypedReport;
  /** Raised by each change of the draft; 0 where she has changed nothing yet. */
  readonly version: number;
  /** Null where she has sent nothing. */
  readonly sent: SentReport | null;
  /** Fields that are not as they were when the newest version was sent; none where nothing was sent. */
  readonly changed: readonly string[];
  /** Null while it can be filled; else why not: the call is over, or she has stopped. */
  readonly ended: "closed" | "stopped" | null;
}

const textsSchema = z.record(z.string(), z.string());

/**
 * A tester's report as it stands.
 *
 * @param connection a transaction that it is read in.
 * @throws {AppError} "not-found" where she is this tester no more, or works from no revision.
 */
export async function readDraft(access: TesterAccess, connection: Connection = database()): Promise<ReportInHand> {
  const row = await connection.tester.findUnique({ where: testerScope(access), select: IN_HAND });
  const [report] = row?.reports ?? [];
  const followed = row?.revision ?? report?.revision;
  if (row == null || followed === undefined) throw new AppError("not-found");
  const revision = toRevision(followed);
  const { revisionId, document: pattern } = revision;
  const { unit } = row;
  const context: ReportContext = { pattern, size: row.size, unit, formatLength: (cm) => formatLength(cm, unit) };
  const sent = report === undefined ? null : sentReport(report, { context, revision });
  const typed = row.reportDraft === null ? (sent?.typed ?? {}) : textsSchema.parse(row.reportDraft.typed);
  const asSent = row.reportDraft?.sent == null ? sent?.typed : textsSchema.parse(row.reportDraft.sent);
  return {
    ...{ context, revisionId, sent, typed },
    changed: asSent === undefined ? [] : changedFields(asSent, typed),
    version: row.reportDraft?.version ?? 0,
    ended: row.stoppedAt !== null ? "stopped" : row.call.status === "closed" ? "closed" : null,
  };
}

const IN_HAND = {
  size: true,
  unit: true,
  stoppedAt: true,
  revision: { select: revisionSelect },
  call: { select: { status: true } },
  reportDraft: { select: { typed: true, sent: true, version: true } },
  reports: {
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
  },
};

interface ReportRow {
  readonly id: string;
  readonly version: number;
  readonly createdAt: Date;
  readonly document: unknown;
  readonly typed: unknown;
  readonly revision: Parameters<typeof toRevision>[0];
}

/** @param given the revision that she works from, which is mostly the one that the report followed. */
function sentReport(
  row: ReportRow,
  given: { readonly context: ReportContext; readonly revision: Revision },
): SentReport {
  const { unit, formatLength } = given.context;
  const isSame = row.revision.id === given.revision.revisionId;
  const { revisionId, document: pattern } = isSame ? given.revision : toRevision(row.revision);
  const report = storedReportSchema.parse(row.document);
  const kept = textsSchema.parse(row.typed);
  const typed = typedOfReport({ report, typed: kept }, { pattern, size: report.size, unit, formatLength });
  const { id: reportId, version, createdAt: sentAt } = row;
  return { reportId, version, sentAt, revisionId, report, kept, typed };
}
