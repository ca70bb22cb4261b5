import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { toRevision } from "@/features/patterns/data";
import { database } from "@/server/database";
import { formatLength } from "@/ui/format-length";
import { NEWEST_REPORT, sentReport } from "../report/data";
import { filledReport, type FilledReport } from "../report/filled-report";

/** A tester's newest report, as its designer reads it. */
export interface ReceivedReport {
  readonly version: number;
  readonly sentAt: Date;
  /** As the tester typed it, with what was asked about it. */
  readonly report: FilledReport;
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
  const { version, sentAt, typed, report } = sentReport(newest, { context: reader, revision });
  const context = { ...reader, pattern: revision.document, size: report.size };
  return { version, sentAt, report: filledReport(testerId, { context, typed, ended: "closed" }) };
}
