import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { toRevision } from "@/features/patterns/data";
import { database } from "@/server/database";
import { formatLength } from "@/ui/format-length";
import { NEWEST_REPORT, sentReport } from "../report/data";
import { filledReport, type FilledReport } from "../report/filled-report";
import { storedPositions, type StoredPositions } from "../report/stored-positions";

/** A tester's newest report, as its designer reads it. */
export interface ReceivedReport {
  readonly version: number;
  readonly sentAt: Date;
  /** As the tester typed it, with what was asked about it. */
  readonly report: FilledReport;
  readonly positions: StoredPositions;
}

/** The newest report of a call's tester; null if nothing was sent, or the tester is of another call. */
export async function readReceivedReport(access: CallAccess, testerId: string): Promise<ReceivedReport | null> {
  const row = await database().tester.findFirst({
    where: { id: testerId, call: callScope(access) },
    select: { unit: true, reports: NEWEST_REPORT },
  });
  const [newest] = row?.reports ?? [];
  if (row === null || newest === undefined) return null;
  const { unit } = row;
  const revision = toRevision(newest.revision);
  const reader = { unit, formatLength: (cm: number) => formatLength(cm, unit) };
  const { version, sentAt, typed, report: stored } = sentReport(newest, { context: reader, revision });
  const context = { ...reader, pattern: revision.document, size: stored.size };
  const report = filledReport(testerId, { context, typed, ended: "closed", asked: [] });
  return { version, sentAt, report, positions: storedPositions(report.read.report, stored) };
}
