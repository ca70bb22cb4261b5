import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import type { NextStep } from "@/features/calls/call-pages";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { dayWords } from "@/ui/moment-copy";

/** So long before does the designer know. */
export const TOLD_DAYS = 30;

/** A closed call of which what is about people is to be deleted. */
export interface Retention {
  readonly callId: string;
  readonly title: string;
  readonly timeZone: string;
  /** When that is due, and at least 30 days after the designer was told. */
  readonly deleteAt: Date;
  /** Null where the designer has not been told since it was closed. */
  readonly toldAt: Date | null;
}

/**
 * Closed calls whose privacy notice says that what is about people is deleted, and that is not done yet.
 *
 * @param which more conditions on `call`.
 */
export async function retentions(connection: Connection, which: Prisma.Sql): Promise<Retention[]> {
  return await connection.$queryRaw<Retention[]>`
    SELECT "callId", title, "timeZone", "toldAt",
      greatest(due_at, coalesce("toldAt", due_at - ${TOLD}) + ${TOLD}) AS "deleteAt"
    FROM (
      SELECT call.id AS "callId", call.title, listing.document ->> 'timeZone' AS "timeZone",
        CASE WHEN call.deletion_told_at >= call.closed_at THEN call.deletion_told_at END AS "toldAt",
        call.closed_at + make_interval(months => (listing.document -> 'notice' ->> 'monthsStored')::int) AS due_at
      FROM call
      JOIN listing ON listing.call_id = call.id
      WHERE call.status = 'closed' AND listing.published_at IS NOT NULL AND jsonb_exists(listing.document, 'notice')
        AND coalesce(call.people_deleted_at < call.closed_at, true) AND ${which}
    ) AS closed
    ORDER BY due_at`;
}

const TOLD = Prisma.sql`make_interval(days => ${TOLD_DAYS})`;

/** What the designer of a closed call still has to save before it is deleted. */
export async function retentionSteps(access: CallAccess): Promise<NextStep[]> {
  if ((await database().call.count({ where: callScope(access) })) === 0) return [];
  const [retention] = await retentions(database(), Prisma.sql`call.id = ${access.callId}::uuid`);
  return retention === undefined ? [] : stepsOf(retention);
}

/** The same of all of a designer's closed calls. */
export async function retentionsOfViewer({ accountId }: Viewer) {
  const own = Prisma.sql`EXISTS (
    SELECT FROM membership WHERE membership.pattern_id = call.pattern_id AND membership.account_id = ${accountId}::uuid
      AND membership.role <> 'viewer')`;
  const rows = await retentions(database(), own);
  return rows
    .map((retention) => ({ callId: retention.callId, title: retention.title, steps: stepsOf(retention) }))
    .filter(({ steps }) => steps.length > 0);
}

function stepsOf({ toldAt, deleteAt, timeZone }: Retention): NextStep[] {
  if (toldAt === null) return [];
  const message = `Names, measurements, photos and words of its testers are deleted on ${dayWords(deleteAt, timeZone)}, as the privacy notice says.`;
  return [{ page: "thanks", message, link: "Save the names you still need" }];
}
