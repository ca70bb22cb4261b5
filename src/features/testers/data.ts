import "server-only";
import type { CallAccess } from "@/features/calls/access";
import { callDates, type CallDates } from "@/features/openings/data";
import { openingSchema, testerDatesSchema, type TesterDates } from "@/features/openings/schema";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { testerScope, type TesterAccess } from "./access";
import { invitationSql } from "./invitation-state-data";

/** The zone of a call that has set none. */
const NO_ZONE = "UTC";

export type ProgressStatus = "track" | "behind" | "stuck" | "stop";

export interface Milestone {
  readonly status: ProgressStatus;
  readonly note: string;
  readonly at: Date;
}

export interface TesterRead {
  readonly testerId: string;
  readonly code: string;
  /** Null once deleted. */
  readonly name: string | null;
  readonly email: string | null;
  /** Id of the size that the tester makes. */
  readonly size: string;
  readonly unit: "cm" | "in";
  readonly terms: "us" | "uk";
  /** The tester's own, or the call's if they chose none. */
  readonly timeZone: string;
  /** Null if neither the call nor the tester has dates. */
  readonly dates: CallDates<TesterDates> | null;
  readonly stoppedAt: Date | null;
  readonly hasAccount: boolean;
  /** The newest progress update. */
  readonly milestone: Milestone | null;
  readonly revisionNumber: number;
  readonly call: {
    readonly callId: string;
    readonly title: string;
    readonly status: "open" | "closed";
    readonly designerName: string;
    readonly invented: boolean;
  };
}

/** Everything that a tester's pages show about the tester and the test, except the report. */
export async function readTester(access: TesterAccess): Promise<TesterRead> {
  const row = await database().tester.findUnique({ where: testerScope(access), select: OWN });
  if (row?.revision == null) throw new AppError("not-found");
  const { contact, call, accountId, milestones, unit, terms } = row;
  const [milestone] = milestones;
  return {
    testerId: row.id,
    code: row.code,
    name: contact?.name ?? null,
    email: contact?.email ?? null,
    size: row.size,
    ...{ unit, terms },
    ...testerTime(row, callTime(call.opening)),
    stoppedAt: row.stoppedAt,
    hasAccount: accountId !== null,
    milestone: milestone ? { status: milestone.word, note: milestone.note, at: milestone.createdAt } : null,
    revisionNumber: row.revision.number,
    call: {
      callId: call.id,
      title: call.title,
      status: call.status,
      designerName: call.pattern.memberships[0]?.account.name ?? "",
      invented: call.pattern.invented,
    },
  };
}

export interface TesterCounts {
  readonly invited: number;
  readonly unanswered: number;
  readonly lapsed: number;
  readonly accepted: number;
  readonly reported: number;
}

/** How many of a call's testers are invited, have answered and have reported. */
export async function testerCounts({ callId, pattern }: CallAccess, now: Date): Promise<TesterCounts> {
  const [counts] = await database().$queryRaw<TesterCounts[]>`
    SELECT
      count(*) FILTER (WHERE was_invited)::int AS invited,
      count(*) FILTER (WHERE was_invited AND invitation = 'invited')::int AS unanswered,
      count(*) FILTER (WHERE was_invited AND invitation = 'lapsed')::int AS lapsed,
      count(*) FILTER (WHERE invitation = 'accepted')::int AS accepted,
      count(*) FILTER (WHERE has_reported)::int AS reported
    FROM (
      SELECT invited_at IS NOT NULL OR accepted_at IS NOT NULL AS was_invited, ${invitationSql(now)} AS invitation,
        EXISTS (SELECT FROM report WHERE report.tester_id = tester.id) AS has_reported
      FROM tester
      JOIN call ON call.id = tester.call_id
      JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
      WHERE call.id = ${callId}::uuid
    ) AS states`;
  return counts ?? { invited: 0, unanswered: 0, lapsed: 0, accepted: 0, reported: 0 };
}

/** A call's dates as moments, null if it has none, and their time zone. */
export interface CallTime {
  readonly timeZone: string;
  readonly dates: CallDates<TesterDates> | null;
}

interface OpeningRow {
  readonly document: unknown;
  readonly publishedAt: Date | null;
}

/** @param opening the call's, as `openingDays` reads it. */
export function callTime(opening: OpeningRow | null | undefined): CallTime {
  if (opening?.publishedAt == null) return { timeZone: NO_ZONE, dates: null };
  const { timeZone, dates } = openingSchema.parse(opening.document);
  return { timeZone, dates: callDates(dates, timeZone) };
}

/** The zone that a tester's dates are shown in, and the dates: their own if they have some, else the call's. */
export function testerTime(
  { dates, timeZone }: { readonly dates: unknown; readonly timeZone: string | null },
  call: CallTime,
): CallTime {
  const own = dates === null ? call.dates : callDates(testerDatesSchema.parse(dates), call.timeZone);
  return { timeZone: timeZone ?? call.timeZone, dates: own };
}

/** The columns of a call that its testers' dates need. */
export const openingDays = { select: { document: true, publishedAt: true } } as const;

/** The pattern's owner, whom testers know as the designer. */
export const designerOfPattern = {
  where: { role: "owner" },
  take: 1,
  select: { account: { select: { name: true } } },
} as const;

const OWN = {
  id: true,
  code: true,
  size: true,
  unit: true,
  terms: true,
  timeZone: true,
  dates: true,
  stoppedAt: true,
  accountId: true,
  contact: true,
  revision: { select: { number: true } },
  milestones: { orderBy: { createdAt: "desc" }, take: 1 },
  call: {
    select: {
      id: true,
      title: true,
      status: true,
      opening: openingDays,
      pattern: { select: { invented: true, memberships: designerOfPattern } },
    },
  },
} as const;
