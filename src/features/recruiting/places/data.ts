import "server-only";
import type { PatternDocument, Places } from "@/engine/pattern";
import {
  applicationSchema,
  measurementsSchema,
  type ApplicationDocument,
  type ApplicationDecision,
} from "@/features/recruiting/applications/schema";
import { callScope, type CallAccess } from "@/features/calls/access";
import { NO_ZONE } from "@/features/recruiting/listing/data";
import {
  listingSchema,
  testerDatesSchema,
  type ListingDocument,
  type TesterDates,
} from "@/features/recruiting/listing/schema";
import { patternScope } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";

/** An applicant who has not been invited. */
export interface Applicant {
  readonly applicationId: string;
  /** Their id in documents; reveals nothing about them. */
  readonly code: string;
  readonly name: string;
  readonly decision: ApplicationDecision | null;
  /** The size of the last placing. */
  readonly size: string | null;
  readonly pin: "size" | "waiting" | null;
  /** Body measurement -> cm; null where they have deleted it. */
  readonly body: Readonly<Record<string, number>> | null;
  readonly said: ApplicationDocument;
  /** Tests of the same owner that they finished or not; null where there are none. */
  readonly record: TestRecord | null;
}

interface TestRecord {
  readonly finished: number;
  readonly dropped: number;
}

/** A person who has been invited, or whose report was imported. */
export interface PlacedTester {
  readonly testerId: string;
  readonly code: string;
  readonly name: string;
  readonly size: string;
  readonly body: Readonly<Record<string, number>> | null;
  readonly linkVersion: number;
  readonly invitedAt: Date | null;
  readonly invitationExpiresAt: Date | null;
  readonly acceptedAt: Date | null;
  readonly declinedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly stoppedAt: Date | null;
  readonly timeZone: string | null;
  /** Their own; null: the call's. */
  readonly dates: TesterDates | null;
}

/** Everything that assigning sizes is based on. */
export interface PlacingRows {
  readonly pattern: PatternDocument;
  /** Null where the call has not been published. */
  readonly listing: ListingDocument | null;
  readonly places: Places;
  readonly applicants: readonly Applicant[];
  readonly testers: readonly PlacedTester[];
  /** The number of people who have withdrawn their application. */
  readonly withdrawn: number;
}

/**
 * Reads what assigning sizes is based on.
 *
 * @param connection a transaction in which it is read.
 */
export async function placingRows(access: CallAccess, connection: Connection = database()): Promise<PlacingRows> {
  const call = callScope(access);
  // One after the other, because a transaction has one connection.
  const { document: pattern } = await latestRevision(access.pattern, connection);
  const published = { call, publishedAt: { not: null } };
  const listing = await connection.listing.findFirst({ where: published, select: { document: true } });
  const places = await connection.place.findMany({ where: { call } });
  const applications = await connection.application.findMany({
    where: { call, withdrawnAt: null, tester: null },
    orderBy: { position: "asc" },
    select: APPLICANT,
  });
  const testers = await connection.tester.findMany({ where: { call }, orderBy: { position: "asc" }, select: TESTER });
  const withdrawn = await connection.application.count({ where: { call, withdrawnAt: { not: null } } });
  const accounts = applications.flatMap(({ accountId }) => accountId ?? []);
  const records = await testRecords(access, accounts, connection);
  return {
    pattern,
    listing: listing === null ? null : listingSchema.parse(listing.document),
    places: Object.fromEntries(places.map(({ size, least, wanted, most }) => [size, { least, wanted, most }])),
    applicants: applications.map((row) => toApplicant(row, records)),
    testers: testers.map(toTester),
    withdrawn,
  };
}

const APPLICANT = {
  ...{ id: true, position: true, accountId: true, document: true, decision: true, size: true, pin: true },
  contact: { select: { name: true } },
  body: { select: { measurements: true } },
} as const satisfies Prisma.ApplicationSelect;

const TESTER = {
  ...{ id: true, code: true, size: true, linkVersion: true, timeZone: true, dates: true },
  ...{
    invitedAt: true,
    invitationExpiresAt: true,
    acceptedAt: true,
    declinedAt: true,
    withdrawnAt: true,
    stoppedAt: true,
  },
  contact: { select: { name: true } },
  body: { select: { measurements: true } },
} as const satisfies Prisma.TesterSelect;

function toApplicant(
  {
    id,
    position,
    accountId,
    document,
    contact,
    body,
    ...row
  }: Prisma.ApplicationGetPayload<{
    select: typeof APPLICANT;
  }>,
  records: ReadonlyMap<string, TestRecord>,
): Applicant {
  const number = position + 1;
  return {
    ...row,
    applicationId: id,
    code: `applicant-${number}`,
    name: contact?.name ?? `Applicant ${number}`,
    body: body === null ? null : measurementsSchema.parse(body.measurements),
    said: applicationSchema.parse(document),
    record: records.get(accountId ?? "") ?? null,
  };
}

function toTester({
  id,
  contact,
  body,
  dates,
  ...row
}: Prisma.TesterGetPayload<{ select: typeof TESTER }>): PlacedTester {
  return {
    ...row,
    testerId: id,
    name: contact?.name ?? row.code,
    body: body === null ? null : measurementsSchema.parse(body.measurements),
    dates: dates === null ? null : testerDatesSchema.parse(dates),
  };
}

/** Other calls of this call's owner. What other designers know about a tester stays with them. */
function ownersOtherCalls({ callId, pattern }: CallAccess): Prisma.CallWhereInput {
  const account = { memberships: { some: { role: "owner", pattern: patternScope(pattern) } } } as const;
  return { id: { not: callId }, pattern: { memberships: { some: { role: "owner", account } } } };
}

/** By account, how many of the owner's other tests the person has reported on, and how many not. */
async function testRecords(
  access: CallAccess,
  accountIds: readonly string[],
  connection: Connection,
): Promise<ReadonlyMap<string, TestRecord>> {
  if (accountIds.length === 0) return new Map();
  const rows = await connection.tester.findMany({
    where: { accountId: { in: [...accountIds] }, acceptedAt: { not: null }, call: ownersOtherCalls(access) },
    select: {
      ...{ accountId: true, stoppedAt: true },
      call: { select: { status: true } },
      reports: { take: 1, select: { id: true } },
    },
  });
  const records = new Map<string, TestRecord>();
  for (const { accountId, stoppedAt, call, reports } of rows) {
    const { finished, dropped } = records.get(accountId ?? "") ?? { finished: 0, dropped: 0 };
    if (reports.length > 0) records.set(accountId ?? "", { finished: finished + 1, dropped });
    else if (stoppedAt !== null || call.status === "closed")
      records.set(accountId ?? "", { finished, dropped: dropped + 1 });
  }
  return records;
}

interface InvitationRecord {
  readonly invited: number;
  readonly reported: number;
}

/** How many people the owner invited to calls now closed, and how many of them reported. */
export async function invitationRecord(access: CallAccess): Promise<InvitationRecord> {
  const { callId, pattern } = access;
  const [record] = await database().$queryRaw<InvitationRecord[]>`
    SELECT count(*)::int AS invited,
      count(*) FILTER (WHERE EXISTS (SELECT FROM report WHERE report.tester_id = tester.id))::int AS reported
    FROM tester
    JOIN call ON call.id = tester.call_id
    WHERE tester.invited_at IS NOT NULL AND tester.withdrawn_at IS NULL AND call.status = 'closed' AND call.id <> ${callId}::uuid
      AND call.pattern_id IN (
        SELECT theirs.pattern_id FROM membership AS theirs
        JOIN membership AS owner ON owner.account_id = theirs.account_id AND owner.role = 'owner'
        JOIN membership AS viewer ON viewer.pattern_id = owner.pattern_id AND viewer.account_id = ${pattern.accountId}::uuid
        WHERE theirs.role = 'owner' AND owner.pattern_id = ${pattern.patternId}::uuid)`;
  return record ?? { invited: 0, reported: 0 };
}

/** The time zone of a call's days. */
export async function callTimeZone(access: CallAccess): Promise<string> {
  const listing = await database().listing.findFirst({
    where: { call: callScope(access), publishedAt: { not: null } },
    select: { document: true },
  });
  return listing === null ? NO_ZONE : listingSchema.parse(listing.document).timeZone;
}
