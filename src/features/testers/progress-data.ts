import "server-only";
import { testerResultsSchema } from "@/engine/results";
import { callScope, type CallAccess } from "@/features/calls/access";
import type { CallDates } from "@/features/openings/data";
import type { TesterDates } from "@/features/openings/schema";
import { storedReportSchema, type StoredReport } from "@/features/reports/schema";
import { database } from "@/server/database";
import { callTime, openingDays, testerTime, type CallTime, type Milestone } from "./data";

/** All that is known of how a tester of a call gets on. */
export interface ProgressRow {
  readonly testerId: string;
  readonly code: string;
  /** Null where it was deleted, or never told. */
  readonly name: string | null;
  readonly email: string | null;
  readonly size: string;
  readonly linkVersion: number;
  readonly hasAccount: boolean;
  readonly invitedAt: Date | null;
  readonly endsAt: Date | null;
  readonly acceptedAt: Date | null;
  readonly declinedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly stoppedAt: Date | null;
  readonly timeZone: string;
  readonly dates: CallDates<TesterDates> | null;
  /** The designer's own, about her. */
  readonly note: string;
  readonly milestone: Milestone | null;
  readonly draft: { readonly updatedAt: Date; readonly hasSwatch: boolean; readonly hasMore: boolean } | null;
  /** What the worker found their gauge to do beyond a tolerance. */
  readonly offGauge: { readonly measurement: string; readonly cm: number } | null;
  readonly report: { readonly sentAt: Date; readonly version: number; readonly document: StoredReport } | null;
}

/** How testers of a call get on, in the order in which they are asked for; ids of other calls are passed over. */
export async function progressRows(
  access: CallAccess,
  { testerIds, time }: { readonly testerIds: readonly string[]; readonly time: CallTime },
): Promise<ProgressRow[]> {
  const rows = await database().tester.findMany({
    where: { call: callScope(access), id: { in: [...testerIds] } },
    select: PROGRESS,
  });
  const places = new Map(testerIds.map((id, index) => [id, index]));
  rows.sort((left, right) => (places.get(left.id) ?? 0) - (places.get(right.id) ?? 0));
  return rows.map(
    ({ contact, milestones: [milestone], reports: [report], analyses: [analysis], reportDraft, ...row }) => ({
      ...{ testerId: row.id, code: row.code, size: row.size, linkVersion: row.linkVersion, note: row.note },
      ...{ name: contact?.name ?? null, email: contact?.email ?? null, hasAccount: row.accountId !== null },
      ...{ invitedAt: row.invitedAt, endsAt: row.invitationEndsAt, acceptedAt: row.acceptedAt },
      ...{ declinedAt: row.declinedAt, withdrawnAt: row.withdrawnAt, stoppedAt: row.stoppedAt },
      ...testerTime(row, time),
      milestone: milestone ? { word: milestone.word, note: milestone.note, at: milestone.createdAt } : null,
      draft: reportDraft === null ? null : { updatedAt: reportDraft.updatedAt, ...filled(reportDraft.typed) },
      offGauge: offGaugeSchema.parse(analysis?.offGauge ?? null),
      report:
        report === undefined
          ? null
          : { sentAt: report.createdAt, version: report.version, document: storedReportSchema.parse(report.document) },
    }),
  );
}

const offGaugeSchema = testerResultsSchema.shape.offGauge;

/** A call's days, and the zone that they are days in. */
export async function readCallTime(access: CallAccess): Promise<CallTime> {
  const call = await database().call.findUnique({ where: callScope(access), select: { opening: openingDays } });
  return callTime(call?.opening);
}

function filled(typed: unknown): { hasSwatch: boolean; hasMore: boolean } {
  const begun = Object.entries(Object(typed)).filter(([, text]) => text !== "");
  return {
    hasSwatch: begun.some(([field]) => field.startsWith("swatch.")),
    hasMore: begun.some(([field]) => !field.startsWith("swatch.")),
  };
}

/** Days on which a call's tester said how she gets on, the newest first. */
export async function milestonesOf(access: CallAccess, testerId: string): Promise<Milestone[]> {
  const rows = await database().milestone.findMany({
    where: { testerId, tester: { call: callScope(access) } },
    orderBy: { createdAt: "desc" },
    take: 30,
  });
  return rows.map(({ word, note, createdAt }) => ({ word, note, at: createdAt }));
}

/** Of two at one moment always the same. */
const NEWEST_WORD = [{ createdAt: "desc" as const }, { id: "desc" as const }];

const PROGRESS = {
  ...{ id: true, code: true, size: true, linkVersion: true, note: true, accountId: true, timeZone: true, dates: true },
  ...{
    invitedAt: true,
    invitationEndsAt: true,
    acceptedAt: true,
    declinedAt: true,
    withdrawnAt: true,
    stoppedAt: true,
  },
  contact: true,
  analyses: { take: 1, select: { offGauge: true } },
  milestones: { orderBy: NEWEST_WORD, take: 1 },
  reportDraft: { select: { typed: true, updatedAt: true } },
  reports: { orderBy: { version: "desc" }, take: 1, select: { createdAt: true, version: true, document: true } },
} as const;
