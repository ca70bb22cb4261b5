import "server-only";
import { z } from "zod";
import { patternOfPieces, type PatternDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { callDates } from "@/features/recruiting/listing/data";
import { testerDatesSchema } from "@/features/recruiting/listing/schema";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { pageOfList, ROWS_A_PAGE, type PageOfList } from "@/ui/page-number";
import { callTime, type CallTime } from "../home/call-time";
import { progressRows } from "./progress-data";
import type { NeedsTogether } from "./need-steps";
import { NEEDS, type Need, type ProgressQuery } from "./progress-query";
import {
  ALL_NEEDS,
  isTesting,
  needBit,
  progressOf,
  PROGRESS_STATES,
  statusSql,
  type Progress,
  type ProgressState,
} from "./tester-status-data";

export interface ProgressList extends PageOfList {
  /** The testers of the page, the most urgent first. */
  readonly people: readonly Progress[];
  /** How many testers of the whole call are in each state. */
  readonly counts: readonly { readonly size: string; readonly state: ProgressState; readonly many: number }[];
  /** How many testers of the whole call need attention, by what for. */
  readonly needs: Readonly<Partial<Record<Need, number>>>;
  /** The same by everything that one tester needs, so that each counts once. */
  readonly together: readonly NeedsTogether[];
}

interface Asked {
  readonly pattern: PatternDocument;
  readonly query: ProgressQuery;
  readonly now: Date;
}

/** A page of a call's testers, those who need attention first. */
export async function progressList(access: CallAccess, { pattern, query, now }: Asked): Promise<ProgressList> {
  const days = await readDays(access);
  const { time } = days;
  const { ids, chosen, counts, needs, together } = await chosenIds(access, { pattern, query, now, ...days });
  const rows = await progressRows(access, { testerIds: ids, time, now });
  return {
    ...pageOfList(query.page, chosen),
    ...{
      counts,
      needs,
      together,
      people: rows.map((row) =>
        progressOf(row, { pattern: patternOfPieces(pattern, days.pieces), timeZone: time.timeZone, now }),
      ),
    },
  };
}

/** How many testers of a call need attention, by everything that they need. */
export async function progressNeeds(
  access: CallAccess,
  { pattern, now }: Pick<Asked, "pattern" | "now">,
): Promise<ProgressList["together"]> {
  const query = { page: 1 };
  return (await chosenIds(access, { pattern, query, now, ...(await readDays(access)) })).together;
}

const chosenSchema = z.object({
  ids: z.array(z.string()),
  chosen: z.number(),
  /** How many testers of the whole call have each state and needs, the needs as bits. */
  counted: z.array(z.object({ size: z.string(), state: z.enum(PROGRESS_STATES), needs: z.number(), many: z.number() })),
});

type Counted = z.infer<typeof chosenSchema>["counted"];

interface Chosen extends Pick<ProgressList, "counts" | "needs" | "together"> {
  readonly ids: readonly string[];
  readonly chosen: number;
}

function countsOf(counted: Counted): ProgressList["counts"] {
  const byPlace = new Map<string, Counted[number]>();
  for (const one of counted) {
    const key = `${one.state} ${one.size}`;
    byPlace.set(key, { ...one, many: one.many + (byPlace.get(key)?.many ?? 0) });
  }
  return [...byPlace.values()].map(({ size, state, many }) => ({ size, state, many }));
}

function needsOf(counted: Counted): ProgressList["needs"] {
  const counts = NEEDS.map(
    (need) => [need, sumOf(counted.filter(({ needs }) => (needs & needBit(need)) > 0))] as const,
  );
  return Object.fromEntries(counts.filter(([, many]) => many > 0));
}

function togetherOf(counted: Counted): ProgressList["together"] {
  return counted
    .filter(({ needs }) => needs > 0)
    .map(({ needs, many }) => ({ many, needs: NEEDS.filter((need) => (needs & needBit(need)) > 0) }));
}

function sumOf(counted: Counted): number {
  return counted.reduce((sum, { many }) => sum + many, 0);
}

function askedBits(needs: NonNullable<ProgressQuery["needs"]>): number {
  return needs === "any" ? ALL_NEEDS : needBit(needs);
}

/** Everybody whom a query lists, on all its pages; without a need, only those who are testing or have tested. */
export async function listedTesterIds(access: CallAccess, { pattern, query, now }: Asked): Promise<readonly string[]> {
  const status = statusOf(access, { pattern, now, ...(await readDays(access)) });
  const rows = await database().$queryRaw<readonly { readonly id: string }[]>`
    SELECT id FROM (${status}) AS status 
    WHERE ${matchesSql(query)} AND (${query.needs !== undefined} OR state = ANY (${PROGRESS_STATES.filter(isTesting)})) ORDER BY position`;
  return rows.map(({ id }) => id);
}

function matchesSql({ size, needs }: Omit<ProgressQuery, "page">): Prisma.Sql {
  const ofSize = size === undefined ? Prisma.sql`true` : Prisma.sql`size = ${size}`;
  return needs === undefined ? ofSize : Prisma.sql`${ofSize} AND needs & ${askedBits(needs)}::int > 0`;
}

function statusOf(
  access: CallAccess,
  { pattern, now, time, ownDays, pieces }: Pick<Asked, "pattern" | "now"> & ListDays,
): Prisma.Sql {
  const measurements = patternOfPieces(pattern, pieces).measurements.map(({ id }) => id);
  const days = time.dates === null ? null : { swatchBy: time.dates.swatchBy.at, reportBy: time.dates.reportBy.at };
  return statusSql({ access, measurements, now, days, ownDays });
}

async function chosenIds(access: CallAccess, { query, now, ...of }: Asked & ListDays): Promise<Chosen> {
  const { page } = query;
  const [row] = await database().$queryRaw<unknown[]>`
    WITH status AS MATERIALIZED (${statusOf(access, { ...of, now })}),
    counted AS MATERIALIZED (SELECT size, state, needs, count(*)::int AS many FROM status GROUP BY size, state, needs),
    chosen AS (
      SELECT id, position, urgency FROM status
      WHERE ${matchesSql(query)}
    ),
    page AS (
      SELECT * FROM chosen ORDER BY urgency, position LIMIT ${ROWS_A_PAGE}
      OFFSET least(${(page - 1) * ROWS_A_PAGE}, (SELECT greatest(count(*) - 1, 0) / ${ROWS_A_PAGE} * ${ROWS_A_PAGE} FROM chosen))
    )
    SELECT
      (SELECT coalesce(jsonb_agg(id ORDER BY urgency, position), '[]') FROM page) AS ids,
      (SELECT count(*)::int FROM chosen) AS chosen,
      (SELECT coalesce(jsonb_agg(counted), '[]') FROM counted) AS counted`;
  const { ids, chosen, counted } = chosenSchema.parse(row);
  return { ids, chosen, counts: countsOf(counted), needs: needsOf(counted), together: togetherOf(counted) };
}

interface ListDays {
  readonly time: CallTime;
  /** The distinct dates that testers have of their own. */
  readonly ownDays: readonly { readonly dates: unknown; readonly swatchBy: Date; readonly reportBy: Date }[];
  /** That are tested; none stands for all. */
  readonly pieces: readonly string[];
}

const daysSchema = z.object({
  document: z.unknown(),
  publishedAt: z.date().nullable(),
  own: z.array(z.unknown()),
  pieces: z.array(z.string()),
});

async function readDays({ callId, pattern }: CallAccess): Promise<ListDays> {
  const [row] = await database().$queryRaw<unknown[]>`
    SELECT call.pieces, listing.document, listing.published_at AS "publishedAt",
      (SELECT coalesce(jsonb_agg(DISTINCT dates), '[]') FROM tester WHERE call_id = call.id AND dates IS NOT NULL) AS own
    FROM call JOIN membership USING (pattern_id)
    LEFT JOIN listing ON listing.call_id = call.id
    WHERE call.id = ${callId}::uuid AND membership.account_id = ${pattern.accountId}::uuid`;
  if (row === undefined) return { time: callTime(null), ownDays: [], pieces: [] };
  const { own, document, publishedAt, pieces } = daysSchema.parse(row);
  const time = callTime({ document, publishedAt });
  const ownDays = own.map((dates) => {
    const { swatchBy, reportBy } = callDates(testerDatesSchema.parse(dates), time.timeZone);
    return { dates, swatchBy: swatchBy.at, reportBy: reportBy.at };
  });
  return { time, ownDays, pieces };
}
