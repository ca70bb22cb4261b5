import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { callScopeSql, type CallAccess } from "@/features/calls/access";
import { Prisma } from "@/generated/prisma/client";
import type { ProgressRow } from "./progress-data";
import { invitationSql, openSizesSql } from "@/features/calls/tester-status-data";
import { NEEDS, type Need } from "./progress-query";
import { invitationState } from "@/features/calls/tester-status";
import { answersAll } from "../report/has-reported-all";

/*
 * A tester's progress, computed twice: for one row that is read, and for all rows of a call inside the database, where
 * lists are filtered, counted and sorted. A database test checks that the two agree.
 */

export const PROGRESS_STATES = [
  "invited",
  "accepted",
  "swatch in",
  "swatch sent",
  "making",
  "reported in part",
  "reported",
  "stopped",
  "declined",
  "withdrawn",
  "lapsed",
] as const;

export type ProgressState = (typeof PROGRESS_STATES)[number];

/** The effect of a tester's gauge on the measurement that it changes most, where it exceeds one tolerance. */
interface GaugeEffect {
  readonly label: string;
  readonly cm: number;
}

export interface Progress {
  readonly row: ProgressRow;
  /** The call's: a designer reads all its days in it. */
  readonly timeZone: string;
  readonly state: ProgressState;
  readonly needs: readonly Need[];
  /** Days since the last sign of activity; null if the tester is not at work. */
  readonly silentDays: number | null;
  readonly offGauge: GaugeEffect | null;
}

/** Days without news after which the designer is told; common practice, no source. */
export const SILENT_DAYS = 10;
const DAY_MS = 24 * 60 * 60 * 1_000;

interface ReadingProgress extends Pick<Progress, "timeZone"> {
  readonly pattern: PatternDocument;
  readonly now: Date;
}

/** A tester's state, and what of it needs attention. */
export function progressOf(row: ProgressRow, { pattern, timeZone, now }: ReadingProgress): Progress {
  const state = progressState(row, pattern, now);
  const silentDays = isAtWork(state) ? silentFor(row, now) : null;
  const offGauge = gaugeEffect(row, pattern);
  return { row, timeZone, state, silentDays, offGauge, needs: needsOf({ row, state, silentDays, offGauge }, now) };
}

/** As computed with the newest report; null if nothing exceeds its tolerance, or it is not known yet. */
function gaugeEffect({ offGauge }: ProgressRow, { measurements }: PatternDocument): GaugeEffect | null {
  const label = measurements.find(({ id }) => id === offGauge?.measurement)?.label;
  return offGauge === null || label === undefined ? null : { label, cm: offGauge.cm };
}

function progressState(row: ProgressRow, pattern: PatternDocument, now: Date): ProgressState {
  const invitation = invitationState({ ...row, invitationExpiresAt: row.expiresAt }, now);
  if (invitation === "stopped" || invitation === "withdrawn" || invitation === "declined") return invitation;
  if (row.report !== null && answersAll(row.report.measurementIds, pattern)) return "reported";
  if (row.report !== null && row.report.measurementIds.length > 0) return "reported in part";
  if (row.report === null && invitation !== "accepted") return invitation;
  if (row.draft?.hasMore) return "making";
  if (row.report !== null) return "swatch sent";
  return row.draft?.hasSwatch ? "swatch in" : "accepted";
}

/** Their gauge can still be changed: they have not begun their garment, as far as is known. */
function isBeforeMaking(state: ProgressState): boolean {
  return state === "accepted" || state === "swatch in" || state === "swatch sent";
}

/** They have accepted, and part of their report is still to come. */
export function isAtWork(state: ProgressState): boolean {
  return isBeforeMaking(state) || state === "making" || state === "reported in part";
}

/** They test, or have tested. */
export function isTesting(state: ProgressState): boolean {
  return isAtWork(state) || state === "reported";
}

/** When they last accepted, typed, sent or told something; null if they never did. */
export function lastHeard({ acceptedAt, milestone, draft, report }: ProgressRow): Date | null {
  const heard = [acceptedAt, milestone?.at, draft?.updatedAt, report?.sentAt].map((at) => at?.getTime() ?? 0);
  const last = Math.max(...heard);
  return last === 0 ? null : new Date(last);
}

function silentFor(row: ProgressRow, now: Date): number {
  return Math.max(0, Math.floor((now.getTime() - (lastHeard(row)?.getTime() ?? 0)) / DAY_MS));
}

function needsOf({ row, state, silentDays, offGauge }: Omit<Progress, "needs" | "timeZone">, now: Date): Need[] {
  const atWork = isAtWork(state);
  const isOpenAgain = state === "stopped" && row.hasOpenSpot && (row.report?.measurementIds ?? []).length === 0;
  const has = (status: string) => atWork && row.milestone?.status === status;
  const holds: Readonly<Record<Need, boolean>> = {
    stuck: has("stuck"),
    stopped: isOpenAgain && row.freedAt === null,
    freed: isOpenAgain && row.freedAt !== null,
    late: atWork && isLate(row, state, now),
    lapsed: state === "lapsed" && row.hasOpenSpot,
    declined: state === "declined" && row.hasOpenSpot,
    "off gauge": offGauge !== null && isBeforeMaking(state),
    answer: row.hasAnswer,
    silent: silentDays !== null && silentDays >= SILENT_DAYS,
    behind: has("behind"),
  };
  return NEEDS.filter((need) => holds[need]);
}

function isLate({ dates }: ProgressRow, state: ProgressState, now: Date): boolean {
  if (dates === null || state === "reported in part") return false;
  return dates.reportBy.at <= now || (state === "accepted" && dates.swatchBy.at <= now);
}

interface StatusAsked {
  readonly access: CallAccess;
  /** Every measurement of the pattern. */
  readonly measurements: readonly string[];
  readonly now: Date;
  /** The call's dates; null if it has none. */
  readonly days: StatusDays | null;
  /** Dates of testers who have their own, by what their rows hold. */
  readonly ownDays: readonly (StatusDays & { readonly dates: unknown })[];
}

interface StatusDays {
  readonly swatchBy: Date;
  readonly reportBy: Date;
}

/** Needs as one number, a bit each in the order of `NEEDS`: for thousands of testers arrays are too slow. */
export function needBit(need: Need): number {
  return 2 ** NEEDS.indexOf(need);
}

/** More than any need's bit. */
const NOT_URGENT = 2 ** NEEDS.length;

export const ALL_NEEDS = NOT_URGENT - 1;

/**
 * A query of every tester of a call: `id`, `position`, `size`, `state`, the bits of `needs`, and `urgency`, the bit of the
 * first of them. Each `OFFSET 0` keeps PostgreSQL from computing what is below it again wherever it is used; what stands
 * behind an `AND` is read only where somebody is in such a state.
 */
export function statusSql(asked: StatusAsked): Prisma.Sql {
  const { access, measurements, now } = asked;
  const heardBy = new Date(now.getTime() - SILENT_DAYS * DAY_MS);
  const bit = (need: Need, holds: Prisma.Sql) => Prisma.sql`CASE WHEN ${holds} THEN ${needBit(need)}::int ELSE 0 END`;
  const bits = [
    bit("stuck", Prisma.sql`at_work AND status = 'stuck'`),
    bit("stopped", Prisma.sql`${IS_OPEN_AGAIN} AND freed_at IS NULL`),
    bit("freed", Prisma.sql`${IS_OPEN_AGAIN} AND freed_at IS NOT NULL`),
    bit(
      "late",
      Prisma.sql`at_work AND state <> 'reported in part'
        AND (report_by <= ${now} OR (state = 'accepted' AND swatch_by <= ${now}))`,
    ),
    bit("lapsed", Prisma.sql`state = 'lapsed' AND has_open_spot`),
    bit("declined", Prisma.sql`state = 'declined' AND has_open_spot`),
    bit(
      "off gauge",
      Prisma.sql`state IN ('accepted', 'swatch in', 'swatch sent') AND id IN (${offGaugeSql(access, measurements)})`,
    ),
    bit("answer", Prisma.sql`has_answer`),
    bit("silent", Prisma.sql`at_work AND heard_at <= ${heardBy}`),
    bit("behind", Prisma.sql`at_work AND status = 'behind'`),
  ];
  return Prisma.sql`
    SELECT id, position, size, state, needs, CASE needs WHEN 0 THEN ${NOT_URGENT}::int ELSE needs & -needs END AS urgency
    FROM (
      SELECT id, position, size, state, ${Prisma.join(bits, " + ")} AS needs
      FROM (
        SELECT *, state IN ('stopped', 'lapsed', 'declined') AND size IN (${openSizesSql(Prisma.sql`${access.callId}::uuid`, now)}) AS has_open_spot,
          state IN ('accepted', 'swatch in', 'swatch sent', 'making', 'reported in part') AS at_work
        FROM (${statesSql(asked)} OFFSET 0) AS states
        OFFSET 0
      ) AS work
      OFFSET 0
    ) AS needed`;
}

const IS_OPEN_AGAIN = Prisma.sql`state = 'stopped' AND has_open_spot AND coalesce(answered_measurements, '[]') = '[]'`;

/** A query of the testers whose gauge changes a measurement beyond a tolerance, by the newest analysis. */
function offGaugeSql({ callId }: CallAccess, measurements: readonly string[]): Prisma.Sql {
  return Prisma.sql`
    SELECT analysed.tester_id FROM analysis JOIN analysis_tester AS analysed ON analysed.analysis_id = analysis.id
    WHERE analysis.call_id = ${callId}::uuid AND analysed.off_gauge IS NOT NULL
      AND analysed.off_gauge ->> 'measurement' = ANY (${[...measurements]}::text[])`;
}

function statesSql({ access, measurements, now, days, ownDays }: StatusAsked): Prisma.Sql {
  const { callId } = access;
  const own = ownDays.map(({ dates, swatchBy, reportBy }) => ({ dates, swatch_by: swatchBy, report_by: reportBy }));
  return Prisma.sql`
    SELECT tester.id, tester.position, tester.size, tester.status, tester.reported_at,
      tester.answered_measurements, tester.freed_at,
      tester.id IN (SELECT asked.tester_id FROM number_question AS asked JOIN tester AS one ON one.id = asked.tester_id
                    WHERE one.call_id = ${callId}::uuid AND asked.answered_at IS NOT NULL AND asked.seen_at IS NULL) AS has_answer,
      greatest(accepted_at, tester.status_at, draft.updated_at, tester.reported_at) AS heard_at,
      CASE WHEN tester.dates IS NULL THEN ${days?.swatchBy ?? null}::timestamptz ELSE own.swatch_by END AS swatch_by,
      CASE WHEN tester.dates IS NULL THEN ${days?.reportBy ?? null}::timestamptz ELSE own.report_by END AS report_by,
      CASE
        WHEN invitation IN ('stopped', 'withdrawn', 'declined') THEN invitation
        WHEN tester.reported_at IS NOT NULL THEN CASE
          WHEN tester.answered_measurements ?& ${[...measurements]}::text[] THEN 'reported'
          WHEN tester.answered_measurements <> '[]' THEN 'reported in part'
          WHEN draft.has_more THEN 'making'
          ELSE 'swatch sent' END
        WHEN invitation IN ('lapsed', 'invited') THEN invitation
        WHEN draft.has_more THEN 'making'
        WHEN draft.has_swatch THEN 'swatch in'
        ELSE 'accepted'
      END AS state
    FROM tester
    CROSS JOIN LATERAL (SELECT ${invitationSql(now)} AS invitation OFFSET 0) AS answered
    LEFT JOIN report_draft AS draft ON draft.tester_id = tester.id
    LEFT JOIN jsonb_to_recordset(${JSON.stringify(own)}::jsonb)
      AS own(dates jsonb, swatch_by timestamptz, report_by timestamptz) ON own.dates = tester.dates
    WHERE tester.call_id = ${callId}::uuid AND ${callScopeSql(access)}`;
}
