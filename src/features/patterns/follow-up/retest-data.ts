import "server-only";
import { z } from "zod";
import type { PatternDocument } from "@/engine/pattern";
import { database } from "@/server/database";
import { patternScope, type PatternAccess } from "../access";
import {
  retestStatus,
  type CorrectedInRevision,
  type MeasuredInRevision,
  type OffInResults,
  type RetestStatus,
} from "./retest-status";

/** A corrected size, and whether it has been tested again. */
export interface CorrectedSizeStanding extends CorrectedInRevision {
  readonly status: RetestStatus;
}

/** The corrected sizes of a pattern, the newest correction first, sizes in their order; of a size that is gone none. */
export async function correctedSizeStandings(
  access: PatternAccess,
  { sizes, measurements }: Pick<PatternDocument, "sizes" | "measurements">,
): Promise<CorrectedSizeStanding[]> {
  const rows = await database().correctedSize.findMany({
    where: { revision: { pattern: patternScope(access) }, size: { in: sizes.map(({ id }) => id) } },
    orderBy: { revision: { number: "desc" } },
    select: {
      ...{ size: true, measurements: true, checkedBy: true, checkedAt: true },
      revision: { select: { number: true } },
    },
  });
  if (rows.length === 0) return [];
  const known = new Set(measurements.map(({ id }) => id));
  const corrected = rows.map(({ revision, ...row }) => ({
    ...row,
    revisionNumber: revision.number,
    measurements: row.measurements.filter((id) => known.has(id)),
  }));
  const [measured, off] = await Promise.all([measuredSince(access, corrected), offInResults(access)]);
  const place = new Map(sizes.map(({ id }, index) => [id, index]));
  return corrected
    .map((one) => ({ ...one, status: retestStatus(one, { measured, off }) }))
    .toSorted(
      (left, right) =>
        right.revisionNumber - left.revisionNumber || (place.get(left.size) ?? 0) - (place.get(right.size) ?? 0),
    );
}

/** Only sizes that wait for another test, or were found different in it. */
export function awaitingRetest<One extends { readonly status: RetestStatus }>(standings: readonly One[]): One[] {
  return standings.filter(({ status }) => status !== "retested");
}

const measuredSchema = z.array(
  z.object({ size: z.string(), revisionNumber: z.int(), measurements: z.array(z.string()) }),
);

/** What the newest report of each tester measured, on the earliest of the corrected revisions or a later one. */
async function measuredSince(
  { patternId, accountId }: PatternAccess,
  corrected: readonly CorrectedInRevision[],
): Promise<MeasuredInRevision[]> {
  const earliest = Math.min(...corrected.map(({ revisionNumber }) => revisionNumber));
  const rows = await database().$queryRaw<unknown[]>`
    SELECT newest.document ->> 'size' AS size, revision.number AS "revisionNumber",
      newest.answered_measurements AS measurements
    FROM call
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${accountId}::uuid
    JOIN tester ON tester.call_id = call.id
    JOIN LATERAL (SELECT * FROM report WHERE report.tester_id = tester.id ORDER BY report.version DESC LIMIT 1) AS newest ON true
    JOIN revision ON revision.id = newest.revision_id AND revision.number >= ${earliest}
    WHERE call.pattern_id = ${patternId}::uuid`;
  return measuredSchema.parse(rows);
}

const offSchema = z.array(z.object({ size: z.string(), measurement: z.string(), revisionNumber: z.int() }));

/** What the newest results of each call find different. */
async function offInResults({ patternId, accountId }: PatternAccess): Promise<OffInResults[]> {
  const rows = await database().$queryRaw<unknown[]>`
    SELECT cell ->> 'size' AS size, cell ->> 'measurement' AS measurement, revision.number AS "revisionNumber"
    FROM call
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${accountId}::uuid
    JOIN LATERAL (
      SELECT * FROM analysis WHERE analysis.call_id = call.id AND analysis.status = 'done'
      ORDER BY analysis.call_version DESC, analysis.created_at DESC LIMIT 1) AS newest ON true
    JOIN revision ON revision.id = newest.revision_id
    CROSS JOIN LATERAL jsonb_path_query(newest.differences, '$.cells[*] ? (@.verdict == "off")') AS cell
    WHERE call.pattern_id = ${patternId}::uuid`;
  return offSchema.parse(rows);
}
