import "server-only";
import { Prisma } from "@/generated/prisma/client";

/** The same rules as `invitationState`, for a tester's row inside the database. */
export function invitationSql(now: Date): Prisma.Sql {
  return Prisma.sql`CASE
    WHEN tester.stopped_at IS NOT NULL THEN 'stopped'
    WHEN tester.withdrawn_at IS NOT NULL THEN 'withdrawn'
    WHEN tester.declined_at IS NOT NULL THEN 'declined'
    WHEN tester.accepted_at IS NOT NULL THEN 'accepted'
    WHEN tester.invitation_ends_at <= ${now} THEN 'lapsed'
    ELSE 'invited' END`;
}
