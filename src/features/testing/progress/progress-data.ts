import "server-only";
import { z } from "zod";
import { testerResultsSchema } from "@/engine/results";
import { callScope, callScopeSql, type CallAccess } from "@/features/calls/access";
import { openSizesSql } from "@/features/calls/tester-status-data";
import type { CallDates } from "@/features/recruiting/listing/data";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { callTime, listingDays, testerTime, type CallTime } from "../home/call-time";
import type { Milestone } from "../home/data";

/** Everything known about a tester's progress. */
export interface ProgressRow {
  readonly testerId: string;
  readonly code: string;
  /** Null if deleted or never given. */
  readonly name: string | null;
  readonly email: string | null;
  readonly size: string;
  readonly linkVersion: number;
  readonly hasAccount: boolean;
  readonly invitedAt: Date | null;
  readonly expiresAt: Date | null;
  readonly acceptedAt: Date | null;
  readonly declinedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly stoppedAt: Date | null;
  /** The designer opened their spot. */
  readonly freedAt: Date | null;
  readonly timeZone: string;
  readonly dates: CallDates<TesterDates> | null;
  /** The designer's note about the tester. */
  readonly note: string;
  readonly milestone: Milestone | null;
  readonly draft: { readonly updatedAt: Date; readonly hasSwatch: boolean; readonly hasMore: boolean } | null;
  /** They answered a question about a number, and nobody has read the answer yet. */
  readonly hasAnswer: boolean;
  /** What the worker found their gauge to do beyond a tolerance. */
  readonly offGauge: { readonly measurement: string; readonly cm: number } | null;
  readonly report: {
    readonly sentAt: Date;
    readonly version: number;
    /** Measurements that were read, or changed on purpose. */
    readonly measurementIds: readonly string[];
  } | null;
  /** Their size has a spot without a tester. */
  readonly hasOpenSpot: boolean;
}

const rowSchema = z.object({
  ...{ testerId: z.string(), code: z.string(), name: z.string().nullable(), email: z.string().nullable() },
  ...{ size: z.string(), linkVersion: z.int(), hasAccount: z.boolean(), note: z.string() },
  ...{ timeZone: z.string().nullable(), dates: z.unknown() },
  ...{ invitedAt: z.date().nullable(), expiresAt: z.date().nullable(), acceptedAt: z.date().nullable() },
  ...{ declinedAt: z.date().nullable(), withdrawnAt: z.date().nullable(), stoppedAt: z.date().nullable() },
  freedAt: z.date().nullable(),
  status: z.enum(["track", "behind", "stuck", "stop"]).nullable(),
  ...{ updateNote: z.string().nullable(), updateAt: z.date().nullable() },
  ...{ draftedAt: z.date().nullable(), hasSwatch: z.boolean().nullable(), hasMore: z.boolean().nullable() },
  offGauge: testerResultsSchema.shape.offGauge,
  hasAnswer: z.boolean(),
  hasOpenSpot: z.boolean(),
  ...{ sentAt: z.date().nullable(), version: z.int().nullable(), measurementIds: z.array(z.string()).nullable() },
});

/** The progress of a call's testers, in the order of the ids; ids of other calls are skipped. */
export async function progressRows(
  access: CallAccess,
  {
    testerIds,
    time,
    now = new Date(),
  }: { readonly testerIds: readonly string[]; readonly time: CallTime; readonly now?: Date },
): Promise<ProgressRow[]> {
  const { callId } = access;
  const rows = await database().$queryRaw<unknown[]>`
    SELECT tester.id AS "testerId", tester.code, tester_contact.name, tester_contact.email, tester.size,
      tester.link_version AS "linkVersion", tester.account_id IS NOT NULL AS "hasAccount", tester.note,
      tester.time_zone AS "timeZone", tester.dates, tester.invited_at AS "invitedAt", tester.invitation_expires_at AS "expiresAt",
      tester.accepted_at AS "acceptedAt", tester.declined_at AS "declinedAt", tester.withdrawn_at AS "withdrawnAt",
      tester.stopped_at AS "stoppedAt", tester.freed_at AS "freedAt", milestone.status, milestone.note AS "updateNote", milestone.created_at AS "updateAt",
      draft.updated_at AS "draftedAt", draft.has_swatch AS "hasSwatch", draft.has_more AS "hasMore",
      EXISTS (SELECT FROM number_question WHERE tester_id = tester.id AND answered_at IS NOT NULL AND seen_at IS NULL)
        AS "hasAnswer",
      analysed.off_gauge AS "offGauge", sent.created_at AS "sentAt", sent.version, sent.answered_measurements AS "measurementIds",
      tester.size IN (${openSizesSql(Prisma.sql`${callId}::uuid`, now)}) AS "hasOpenSpot"
    FROM unnest(${[...testerIds]}::uuid[]) WITH ORDINALITY AS asked (id, place)
    JOIN tester ON tester.id = asked.id
    LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
    LEFT JOIN report_draft AS draft ON draft.tester_id = tester.id
    LEFT JOIN LATERAL (
      SELECT off_gauge FROM analysis_tester JOIN analysis ON analysis.id = analysis_id
      WHERE tester_id = tester.id AND analysis.call_id = tester.call_id LIMIT 1) AS analysed ON true
    LEFT JOIN LATERAL (SELECT status::text, note, created_at FROM milestone WHERE tester_id = tester.id
                       ORDER BY created_at DESC, id DESC LIMIT 1) AS milestone ON true
    LEFT JOIN LATERAL (SELECT version, answered_measurements, created_at FROM report WHERE tester_id = tester.id
                       ORDER BY version DESC LIMIT 1) AS sent ON true
    WHERE tester.call_id = ${callId}::uuid AND ${callScopeSql(access)}
    ORDER BY asked.place`;
  return z
    .array(rowSchema)
    .parse(rows)
    .map((row) => toProgressRow(row, time));
}

function toProgressRow(
  {
    status,
    updateNote,
    updateAt,
    draftedAt,
    hasSwatch,
    hasMore,
    sentAt,
    version,
    measurementIds,
    ...row
  }: z.infer<typeof rowSchema>,
  time: CallTime,
): ProgressRow {
  return {
    ...row,
    ...testerTime(row, time),
    milestone: status === null || updateAt === null ? null : { status, note: updateNote ?? "", at: updateAt },
    draft:
      draftedAt === null ? null : { updatedAt: draftedAt, hasSwatch: hasSwatch === true, hasMore: hasMore === true },
    report: sentAt === null ? null : { sentAt, version: version ?? 1, measurementIds: measurementIds ?? [] },
  };
}

/** A call's dates, and their time zone. */
export async function readCallTime(access: CallAccess): Promise<CallTime> {
  const call = await database().call.findUnique({ where: callScope(access), select: { listing: listingDays } });
  return callTime(call?.listing);
}

/** A tester's progress updates, the newest first. */
export async function milestonesOf(access: CallAccess, testerId: string): Promise<Milestone[]> {
  const rows = await database().milestone.findMany({
    where: { testerId, tester: { call: callScope(access) } },
    orderBy: { createdAt: "desc" },
    take: 30,
  });
  return rows.map(({ status, note, createdAt }) => ({ status, note, at: createdAt }));
}
