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

/** A query of how many testers of `call` are invited, have answered and have reported more than a swatch. */
export function testerCountsSql(now: Date): Prisma.Sql {
  return Prisma.sql`
    SELECT
      count(*) FILTER (WHERE was_invited)::int AS invited,
      count(*) FILTER (WHERE was_invited AND invitation = 'invited')::int AS unanswered,
      count(*) FILTER (WHERE was_invited AND invitation = 'lapsed')::int AS lapsed,
      count(*) FILTER (WHERE invitation = 'accepted')::int AS accepted,
      count(*) FILTER (WHERE has_reported)::int AS reported
    FROM (
      SELECT invited_at IS NOT NULL OR accepted_at IS NOT NULL AS was_invited, ${invitationSql(now)} AS invitation,
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
