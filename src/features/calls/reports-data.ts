import "server-only";
import { database } from "@/server/database";
import { ROWS_A_PAGE } from "@/ui/page-number";
import { callScope, callScopeSql, type CallAccess } from "./access";
import type { CallTester } from "./data";

export interface CallReport extends CallTester {
  readonly size: string;
  readonly sentAt: Date;
  /** The revision that they followed. */
  readonly revisionNumber: number;
}

export interface ReportsBySize {
  readonly total: number;
  readonly bySize: ReadonlyMap<string, number>;
  /** Every tester's newest report in the call's order; null where there are too many to list. */
  readonly listed: readonly CallReport[] | null;
}

/** How many have reported in each size and, for a small call, who, when, and with which revision. */
export async function reportsBySize(access: CallAccess): Promise<ReportsBySize> {
  const rows = await database().$queryRaw<{ readonly size: string; readonly many: number }[]>`
    SELECT size, count(*)::int AS many FROM tester
    WHERE call_id = ${access.callId}::uuid AND reported_at IS NOT NULL AND ${callScopeSql(access)}
    GROUP BY size`;
  const total = rows.reduce((sum, { many }) => sum + many, 0);
  return {
    total,
    bySize: new Map(rows.map(({ size, many }) => [size, many])),
    listed: total > ROWS_A_PAGE ? null : await listedReports(access),
  };
}

async function listedReports(access: CallAccess): Promise<CallReport[]> {
  const rows = await database().tester.findMany({
    where: { call: callScope(access) },
    orderBy: { position: "asc" },
    select: {
      ...{ code: true, size: true },
      contact: { select: { name: true } },
      reports: {
        orderBy: { version: "desc" },
        take: 1,
        select: { createdAt: true, revision: { select: { number: true } } },
      },
    },
  });
  return rows.flatMap(({ code, size, contact, reports: [report] }) =>
    report === undefined
      ? []
      : [{ code, name: contact?.name ?? null, size, sentAt: report.createdAt, revisionNumber: report.revision.number }],
  );
}
