import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { toRevision } from "@/features/patterns/data";
import { database } from "@/server/database";
import { formatLength } from "@/ui/format-length";
import type { ReportPart, StoredReport } from "@/features/calls/report-schema";
import { NEWEST_REPORT, sentReport } from "../report/data";
import { filledReport, type FilledReport } from "../report/filled-report";

/** A tester's newest report, as its designer reads it. */
export interface ReceivedReport {
  readonly version: number;
  readonly sentAt: Date;
  /** As the tester typed it, with what was asked about it. */
  readonly report: FilledReport;
  /** Where the items that are read stand in the report as stored; null for one that is not found there. */
  readonly positions: Readonly<Record<ReportPart, readonly (number | null)[]>>;
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
  const report = filledReport(testerId, { context, typed, ended: "closed" });
  return { version, sentAt, report, positions: storedPositions(report.read.report, stored) };
}

/** Where the items of a report as it is read stand in the stored one, whose order may be another. */
function storedPositions(read: FilledReport["read"]["report"], stored: StoredReport): ReceivedReport["positions"] {
  return {
    swatches: positionsIn(stored.swatches, read.swatches, (one, other) =>
      [one.fabric === other.fabric, one.stitches === other.stitches, one.rows === other.rows].every(Boolean),
    ),
    readings: positionsIn(stored.readings, read.readings, (one, other) =>
      [one.measurement === other.measurement, Math.abs(one.cm - other.cm) < SAME_CM].every(Boolean),
    ),
    yarn: positionsIn(stored.yarn, read.yarn, (one, other) =>
      [one.yarn === other.yarn, one.grams === other.grams].every(Boolean),
    ),
  };
}

const SAME_CM = 1e-6;

function positionsIn<Item>(
  stored: readonly Item[],
  read: readonly Item[],
  isSame: (one: Item, other: Item) => boolean,
): (number | null)[] {
  const taken = new Set<number>();
  return read.map((item) => {
    const position = stored.findIndex((other, index) => !taken.has(index) && isSame(item, other));
    if (position === -1) return null;
    taken.add(position);
    return position;
  });
}
