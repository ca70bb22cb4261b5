import "server-only";
import { z } from "zod";
import { applicationSchema, measurementsSchema } from "@/features/recruiting/applications/schema";
import { callScopeSql, type CallAccess } from "@/features/calls/access";
import { listingSchema, testerDatesSchema, type ListingDocument } from "@/features/recruiting/listing/schema";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { pageOfList, type PageOfList } from "@/ui/page-number";
import { MADE_BY, personAnswerSchema, storedBoardSchema, type StoredBoard } from "./stored-board";
import { testerState, type TesterState } from "./tester-state";

/** Whether the stored placing matches the current applications, testers and sizes. */
export type PlacingStatus = "current" | "updating" | "failed";

export interface StoredPlacing {
  readonly status: PlacingStatus;
  /** Null until it has been calculated. */
  readonly board: StoredBoard | null;
  /** Null where the call has not been published. */
  readonly listing: ListingDocument | null;
}

const storedSchema = z.object({
  board: z.unknown(),
  made_by: z.string().nullable(),
  is_current: z.boolean(),
  listing: z.unknown(),
});

/** Where clause of a stored placing that is still current. */
function isCurrentSql(now: Date): Prisma.Sql {
  return Prisma.sql`placement.made_by = ${MADE_BY} AND (placement.valid_until > ${now} OR placement.valid_until IS NULL)
    AND NOT EXISTS (SELECT FROM placement_change WHERE placement_change.call_id = placement.call_id)`;
}

/** The last calculated placing. */
export async function storedPlacing({ callId, pattern }: CallAccess, now: Date): Promise<StoredPlacing> {
  const rows = await database().$queryRaw<unknown[]>`
    SELECT placement.board, placement.made_by, coalesce(${isCurrentSql(now)}, false) AS is_current, listing.document AS listing
    FROM call
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
    LEFT JOIN placement ON placement.call_id = call.id
    LEFT JOIN listing ON listing.call_id = call.id AND listing.published_at IS NOT NULL
    WHERE call.id = ${callId}::uuid`;
  const [row] = z.array(storedSchema).parse(rows);
  if (row === undefined) return { status: "updating", board: null, listing: null };
  // A placing stored by another version is shown only after it is calculated again.
  const board = row.made_by === MADE_BY && row.board !== null ? storedBoardSchema.parse(row.board) : null;
  return {
    board,
    status: !row.is_current ? "updating" : board === null ? "failed" : "current",
    listing: row.listing === null ? null : listingSchema.parse(row.listing),
  };
}

/** Whether a call's placing is still being calculated. */
export async function isPlacingUpdating(access: CallAccess): Promise<boolean> {
  return (await storedPlacing(access, new Date())).status === "updating";
}

interface Asked {
  /** Positions on the board. */
  readonly positions: readonly number[];
  /** Others who are mentioned, wherever they are. */
  readonly applications: readonly string[];
  readonly testers: readonly string[];
}

const momentsSchema = z.object({
  invited_at: z.date().nullable(),
  invitation_expires_at: z.date().nullable(),
  accepted_at: z.date().nullable(),
  declined_at: z.date().nullable(),
  withdrawn_at: z.date().nullable(),
  stopped_at: z.date().nullable(),
});

const personSchema = z.object({
  position: z.int().nullable(),
  size: z.string().nullable(),
  answer: personAnswerSchema.nullable(),
  application_id: z.string().nullable(),
  number: z.int().nullable(),
  pin: z.enum(["size", "waiting"]).nullable(),
  accepts: applicationSchema.shape.accepts.nullish(),
  prefers: applicationSchema.shape.prefers.nullish(),
  tester_id: z.string().nullable(),
  code: z.string().nullable(),
  name: z.string().nullable(),
  body: measurementsSchema.nullable(),
  ...momentsSchema.shape,
});

/** A person as shown on the page; an applicant or a tester. */
export type PlacingPerson = z.infer<typeof personSchema>;

/** People of a call with their current names and measurements; withdrawn applicants are left out. */
export async function placingPeople(
  access: CallAccess,
  { positions, applications, testers }: Asked,
): Promise<readonly PlacingPerson[]> {
  const { callId } = access;
  if (positions.length + applications.length + testers.length === 0) return [];
  const rows = await database().$queryRaw<unknown[]>`
    WITH asked AS (
      SELECT application_id, tester_id, position, size, answer FROM placement_person
      WHERE call_id = ${callId}::uuid
        AND (position = ANY (${positions}::int[]) OR application_id = ANY (${applications}::uuid[]))
      UNION ALL
      SELECT id, NULL, NULL, NULL, NULL FROM unnest(${applications}::uuid[]) AS id
      WHERE NOT EXISTS (SELECT FROM placement_person WHERE application_id = id)
      UNION ALL
      SELECT NULL, id, NULL, NULL, NULL FROM unnest(${testers}::uuid[]) AS id
    )
    SELECT asked.position, asked.size, asked.answer,
      application.id AS application_id, application.position AS number, application.pin,
      application.document -> 'accepts' AS accepts, application.document -> 'prefers' AS prefers,
      tester.id AS tester_id, tester.code,
      coalesce(application_contact.name, tester_contact.name) AS name,
      coalesce(application_body.measurements, tester_body.measurements) AS body,
      tester.invited_at, tester.invitation_expires_at, tester.accepted_at, tester.declined_at, tester.withdrawn_at, tester.stopped_at
    FROM asked
    LEFT JOIN application ON application.id = asked.application_id AND application.call_id = ${callId}::uuid AND application.withdrawn_at IS NULL
    LEFT JOIN application_contact ON application_contact.application_id = application.id
    LEFT JOIN application_body ON application_body.application_id = application.id
    LEFT JOIN tester ON tester.id = asked.tester_id AND tester.call_id = ${callId}::uuid
    LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
    LEFT JOIN tester_body ON tester_body.tester_id = tester.id
    WHERE num_nonnulls(application.id, tester.id) > 0 AND ${callScopeSql(access)}
    ORDER BY asked.position`;
  return z.array(personSchema).parse(rows);
}

export interface InvitedPage extends PageOfList {
  readonly invited: readonly InvitedTester[];
}

export interface InvitedTester {
  readonly testerId: string;
  readonly linkVersion: number;
  readonly name: string;
  readonly size: string;
  readonly state: TesterState;
  readonly expiresAt: Date | null;
  readonly timeZone: string | null;
  /** Days of their own; null: the call's. */
  readonly dates: z.infer<typeof testerDatesSchema> | null;
}

const INVITATIONS_A_PAGE = 12;

const invitedSchema = z.object({
  many: z.int(),
  id: z.string(),
  link_version: z.int(),
  name: z.string(),
  size: z.string(),
  time_zone: z.string().nullable(),
  dates: testerDatesSchema.nullable(),
  ...momentsSchema.shape,
});

/** A page of those invited, those without an answer first. */
export async function invitedPage(
  { callId, pattern }: CallAccess,
  { page, now }: { readonly page: number; readonly now: Date },
): Promise<InvitedPage> {
  const found = await database().$queryRaw<unknown[]>`
    WITH invited AS (
      SELECT tester.id, tester.position,
        accepted_at IS NULL AND declined_at IS NULL AND withdrawn_at IS NULL AND stopped_at IS NULL
          AND (invitation_expires_at IS NULL OR invitation_expires_at > ${now}) AS is_awaited
      FROM tester
      JOIN call ON call.id = tester.call_id
      JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
      WHERE call.id = ${callId}::uuid AND invited_at IS NOT NULL
    ),
    counted AS (SELECT count(*)::int AS many FROM invited),
    shown AS (
      SELECT id, is_awaited FROM invited ORDER BY is_awaited DESC, position LIMIT ${INVITATIONS_A_PAGE}
      OFFSET least(${(page - 1) * INVITATIONS_A_PAGE},
                   (SELECT greatest(many - 1, 0) / ${INVITATIONS_A_PAGE} * ${INVITATIONS_A_PAGE} FROM counted))
    )
    SELECT many, tester.id, link_version, coalesce(tester_contact.name, code) AS name, size, time_zone, dates,
      invited_at, invitation_expires_at, accepted_at, declined_at, withdrawn_at, stopped_at
    FROM shown
    CROSS JOIN counted
    JOIN tester ON tester.id = shown.id
    LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
    ORDER BY is_awaited DESC, position`;
  const rows = z.array(invitedSchema).parse(found);
  return {
    ...pageOfList(page, rows[0]?.many ?? 0, INVITATIONS_A_PAGE),
    invited: rows.map(({ id, link_version, name, size, time_zone, dates, ...row }) => ({
      ...{ testerId: id, linkVersion: link_version, name, size, dates, timeZone: time_zone },
      ...{ expiresAt: row.invitation_expires_at, state: testerState(momentsOf(row), now) },
    })),
  };
}

/** The state of a tester's invitation; null for an applicant. */
export function stateOf(person: PlacingPerson, now: Date): TesterState | null {
  return person.tester_id === null ? null : testerState(momentsOf(person), now);
}

function momentsOf(row: z.infer<typeof momentsSchema>) {
  return {
    ...{ invitedAt: row.invited_at, invitationExpiresAt: row.invitation_expires_at, acceptedAt: row.accepted_at },
    ...{ declinedAt: row.declined_at, withdrawnAt: row.withdrawn_at, stoppedAt: row.stopped_at },
  };
}
