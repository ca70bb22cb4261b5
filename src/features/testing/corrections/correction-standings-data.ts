import "server-only";
import { z } from "zod";
import { patternOfPieces } from "@/engine/pattern";
import { CORRECTION_ANSWERS } from "@/engine/reporting";
import { callScope, type CallAccess } from "@/features/calls/access";
import { latestRevision } from "@/features/patterns/data";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";

/** Names that are listed of one group. */
const MAX_NAMES = 12;

/** How somebody whom a correction concerns stands to it: their answer, or none yet; whoever has finished is told, and may have read it. */
const STANDINGS = ["unanswered", ...CORRECTION_ANSWERS, "told", "read"] as const;

export interface AnswerGroup {
  readonly standing: (typeof STANDINGS)[number];
  readonly many: number;
  /** The first of them, in the order of the call. */
  readonly names: readonly string[];
}

const groupsSchema = z.array(
  z.object({ correctionId: z.string(), standing: z.enum(STANDINGS), many: z.int(), names: z.array(z.string()) }),
);

/** How the testers of each correction of the call stand to it. */
export async function answerGroups(access: CallAccess) {
  const rows = await database().$queryRaw<unknown[]>`
    WITH standings AS (${standingsSql(access, await askedMeasurements(access))})
    SELECT correction_id AS "correctionId", standing, count(*)::int AS many,
      (array_agg(name ORDER BY position))[1:${MAX_NAMES}::int] AS names
    FROM standings GROUP BY correction_id, standing`;
  const order = (standing: AnswerGroup["standing"]) => STANDINGS.indexOf(standing);
  return groupsSchema.parse(rows).toSorted((left, right) => order(left.standing) - order(right.standing));
}

/** How many testers have not answered a correction that asks them. */
export async function unansweredTesters(access: CallAccess): Promise<number> {
  if ((await database().correction.count({ where: { call: callScope(access) } })) === 0) return 0;
  const [row] = await database().$queryRaw<{ many: number }[]>`
    WITH standings AS (${standingsSql(access, await askedMeasurements(access))})
    SELECT count(DISTINCT tester_id)::int AS many FROM standings WHERE standing = 'unanswered'`;
  return row?.many ?? 0;
}

/** The measurements of a test of some pieces; null where all are asked for. */
async function askedMeasurements(access: CallAccess): Promise<string[] | null> {
  const call = await database().call.findUnique({ where: callScope(access), select: { pieces: true } });
  if (call === null || call.pieces.length === 0) return null;
  const { document } = await latestRevision(access.pattern);
  return patternOfPieces(document, call.pieces).measurements.map(({ id }) => id);
}

/**
 * A query of every correction of a call with every tester at work whom it concerns. They have finished, by the rule of
 * `hasReportedAll`, where every measurement of their revision is answered; nobody answers once the call is closed.
 */
function standingsSql({ callId, pattern }: CallAccess, asked: readonly string[] | null): Prisma.Sql {
  return Prisma.sql`
    SELECT correction.id AS correction_id, tester.id AS tester_id, tester.position, tester.name,
      coalesce(answered.answer::text, CASE
        WHEN NOT tester.is_finished THEN 'unanswered' WHEN seen.tester_id IS NULL THEN 'told' ELSE 'read' END) AS standing
    FROM correction
    JOIN (
      SELECT tester.id, tester.size, tester.position, coalesce(tester_contact.name, tester.code) AS name,
        call.status = 'closed' OR coalesce(tester.answered_measurements ?& measured.ids, false) AS is_finished
      FROM tester
      JOIN call ON call.id = tester.call_id
      JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
      LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
      LEFT JOIN (
        SELECT revision.id, array(
          SELECT each ->> 'id' FROM jsonb_array_elements(revision.document -> 'measurements') AS each
          WHERE ${asked === null} OR each ->> 'id' = ANY (${[...(asked ?? [])]}::text[])
        ) AS ids
        FROM revision WHERE revision.pattern_id = ${pattern.patternId}::uuid OFFSET 0
      ) AS measured ON measured.id = tester.revision_id
      WHERE tester.call_id = ${callId}::uuid AND tester.accepted_at IS NOT NULL AND tester.stopped_at IS NULL
      OFFSET 0
    ) AS tester ON correction.sizes = '{}' OR tester.size = ANY (correction.sizes)
    LEFT JOIN correction_answer AS answered ON answered.correction_id = correction.id AND answered.tester_id = tester.id
    LEFT JOIN correction_read AS seen ON seen.correction_id = correction.id AND seen.tester_id = tester.id
    WHERE correction.call_id = ${callId}::uuid`;
}
