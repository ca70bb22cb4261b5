import "server-only";
import { z } from "zod";
import { causeShape, cellSchema } from "@/engine/gaps";
import { gradedCounts, measurementsOfCount, ownValue, type PatternDocument } from "@/engine/pattern";
import { fieldOf } from "@/engine/reporting";
import { callScope, type CallAccess } from "@/features/calls/access";
import { numberChangesSchema, type NumberChange } from "@/features/calls/correction-schema";
import type { Revision } from "@/features/patterns/data";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";

/** A count that the text of a size seems to have wrong, while testers of that size have not reached it. */
export interface EarlyCorrection {
  readonly change: NumberChange;
  /** Those who have not reached it, in the order of the call. */
  readonly names: readonly string[];
}

const foundSchema = z.object({ causes: z.array(z.object(causeShape)), cells: z.array(cellSchema) });

/**
 * The counts that the newest analysis names as the cause of a difference that is certain, which no correction is published
 * about yet, where testers of that size can still be told in time. Nothing where it is of another revision.
 */
export async function earlyCorrections(
  access: CallAccess,
  { revisionId, document: pattern }: Pick<Revision, "revisionId" | "document">,
): Promise<EarlyCorrection[]> {
  const [row] = await database().$queryRaw<unknown[]>`
    SELECT jsonb_path_query_array(differences, '$.causes[*] ? (@.kind == "count")') AS causes,
      jsonb_path_query_array(differences, '$.cells[*] ? (@.verdict == "off")') AS cells
    FROM analysis
    JOIN call ON call.id = analysis.call_id
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${access.pattern.accountId}::uuid
    WHERE analysis.call_id = ${access.callId}::uuid AND analysis.status = 'done'
      AND analysis.revision_id = ${revisionId}::uuid
    ORDER BY analysis.call_version DESC, analysis.created_at DESC
    LIMIT 1`;
  const found = foundSchema.safeParse(row);
  if (!found.success) return [];
  const { causes, cells } = found.data;
  const certain = causes.flatMap(({ id: count, size, estimate }) => {
    const right = size === undefined ? undefined : ownValue(gradedCounts(pattern, size), count);
    if (size === undefined || right === undefined) return [];
    const measured = measurementsOfCount(pattern, count);
    const isOff = cells.some((cell) => cell.size === size && measured.includes(cell.measurement));
    return isOff ? [{ count, size, was: Math.max(0, right + estimate), becomes: right }] : [];
  });
  return await tellableInTime(access, pattern, certain);
}

/** What no correction says yet, and whom of its sizes it would still reach in time. */
export async function tellableInTime(
  access: CallAccess,
  pattern: PatternDocument,
  changes: readonly NumberChange[],
): Promise<EarlyCorrection[]> {
  return await notReached(access, pattern, await unpublishedChanges(access, changes));
}

/** Changed numbers that no correction of the call says yet. */
export async function unpublishedChanges(
  access: CallAccess,
  changes: readonly NumberChange[],
  connection: Connection = database(),
): Promise<readonly NumberChange[]> {
  if (changes.length === 0) return [];
  const rows = await connection.correction.findMany({ where: { call: callScope(access) }, select: { numbers: true } });
  const published = rows.flatMap(({ numbers }) => numberChangesSchema.parse(numbers));
  return changes.filter(({ count, size }) => !published.some((one) => one.count === count && one.size === size));
}

const namedSchema = z.array(z.object({ at: z.int(), names: z.array(z.string()) }));

/**
 * Testers have reached a count once they have entered it, or read a measurement that it makes. Drafts are read inside the
 * database, and only of those who have not sent such a reading.
 */
async function notReached(
  { callId, pattern: { accountId } }: CallAccess,
  pattern: PatternDocument,
  changes: readonly NumberChange[],
): Promise<EarlyCorrection[]> {
  if (changes.length === 0) return [];
  const asked = changes.map(({ count, size }, at) => {
    const measurements = measurementsOfCount(pattern, count);
    return { at, size, measurements, entered: fieldOf.worked(count) };
  });
  const rows = await database().$queryRaw<unknown[]>`
    SELECT asked.at, array_agg(coalesce(tester_contact.name, tester.code) ORDER BY tester.position) AS names
    FROM jsonb_to_recordset(${JSON.stringify(asked)}::jsonb) AS asked (at int, size text, measurements text[], entered text)
    JOIN tester ON tester.call_id = ${callId}::uuid AND tester.size = asked.size
      AND tester.accepted_at IS NOT NULL AND tester.stopped_at IS NULL
      AND NOT coalesce(tester.answered_measurements ?| asked.measurements, false)
    JOIN call ON call.id = tester.call_id
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${accountId}::uuid
    LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
    WHERE NOT EXISTS (
      SELECT FROM report_draft CROSS JOIN LATERAL jsonb_each_text(report_draft.typed) AS field (name, text)
      WHERE report_draft.tester_id = tester.id AND field.text <> '' AND (field.name = asked.entered
        OR split_part(field.name, '.', 1) = 'reading' AND split_part(field.name, '.', 2) = ANY (asked.measurements)))
    GROUP BY asked.at ORDER BY asked.at`;
  return namedSchema.parse(rows).flatMap(({ at, names }) => {
    const change = changes[at];
    return change === undefined ? [] : [{ change, names }];
  });
}
