import "server-only";
import { Prisma } from "@/generated/prisma/client";

/** The same rules as `invitationState`, for a tester's row inside the database. */
export function invitationSql(now: Date): Prisma.Sql {
  return Prisma.sql`CASE
    WHEN tester.stopped_at IS NOT NULL THEN 'stopped'
    WHEN tester.withdrawn_at IS NOT NULL THEN 'withdrawn'
    WHEN tester.declined_at IS NOT NULL THEN 'declined'
    WHEN tester.accepted_at IS NOT NULL THEN 'accepted'
    WHEN tester.invitation_expires_at <= ${now} THEN 'lapsed'
    ELSE 'invited' END`;
}

/** The same as `takesPlace`, inside the database: imported testers count as invited. */
function takesPlaceSql(now: Date): Prisma.Sql {
  return Prisma.sql`(${invitationSql(now)}) IN ('invited', 'accepted')`;
}

/** A query of the sizes of a call that have a spot without a tester, and without an applicant who is to be invited to it. */
export function openSizesSql(callId: Prisma.Sql, now: Date): Prisma.Sql {
  return Prisma.sql`
    SELECT place.size FROM place
    LEFT JOIN (
      SELECT size, count(*) AS people FROM (
        SELECT tester.size FROM tester WHERE tester.call_id = ${callId} AND ${takesPlaceSql(now)}
        UNION ALL
        SELECT application.size FROM application LEFT JOIN tester ON tester.application_id = application.id
        WHERE application.call_id = ${callId} AND application.size IS NOT NULL AND application.withdrawn_at IS NULL
          AND application.decision IS DISTINCT FROM 'no' AND tester.id IS NULL
      ) AS takers GROUP BY size
    ) AS taken ON taken.size = place.size
    WHERE place.call_id = ${callId} AND place.wanted > coalesce(taken.people, 0)`;
}

/**
 * A query of how many testers of `call` are invited, have answered and have reported more than a swatch; an invitation
 * that ended counts as `lapsed` while its spot is open.
 */
export function testerCountsSql(now: Date): Prisma.Sql {
  return Prisma.sql`
    SELECT
      count(*) FILTER (WHERE was_invited)::int AS invited,
      count(*) FILTER (WHERE was_invited AND invitation = 'invited')::int AS unanswered,
      count(*) FILTER (WHERE was_invited AND invitation = 'lapsed' AND has_open_spot)::int AS lapsed,
      count(*) FILTER (WHERE invitation = 'accepted')::int AS accepted,
      count(*) FILTER (WHERE has_reported)::int AS reported
    FROM (
      SELECT invited_at IS NOT NULL OR accepted_at IS NOT NULL AS was_invited, ${invitationSql(now)} AS invitation,
        tester.size IN (${openSizesSql(Prisma.sql`call.id`, now)}) AS has_open_spot,
        coalesce(answered_measurements <> '[]', false) AS has_reported
      FROM tester
      WHERE tester.call_id = call.id
    ) AS states`;
}

/** Where clause of testers who occupy a spot: imported, at work, or invited and still able to answer. */
export function takesPlace(now: Date): Prisma.TesterWhereInput {
  return {
    stoppedAt: null,
    declinedAt: null,
    withdrawnAt: null,
    OR: [{ invitedAt: null }, { acceptedAt: { not: null } }, { invitationExpiresAt: { gt: now } }],
  };
}
