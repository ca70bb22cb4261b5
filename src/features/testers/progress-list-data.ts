import "server-only";
import { z } from "zod";
import type { PatternDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { callDates } from "@/features/openings/data";
import { testerDatesSchema } from "@/features/openings/schema";
import { database } from "@/server/database";
import { pageOfList, ROWS_A_PAGE, type PageOfList } from "@/ui/page-number";
import type { CallTime } from "./data";
import { progressRows, readCallTime } from "./progress-data";
import { NEEDS, type Need, type ProgressQuery } from "./progress-query";
import { progressOf, PROGRESS_STATES, statusSql, type Progress, type ProgressState } from "./tester-status-data";

export interface ProgressList extends PageOfList {
  /** Those of the page, the most urgent first. */
  readonly people: readonly Progress[];
  /** How many of the whole call are where. */
  readonly counts: readonly { readonly size: string; readonly state: ProgressState; readonly many: number }[];
  /** How many of the whole call need the designer, by what for. */
  readonly needs: Readonly<Partial<Record<Need, number>>>;
}

interface Asked {
  readonly pattern: PatternDocument;
  readonly query: ProgressQuery;
  readonly now: Date;
}

/** A page of a call's testers, those first who need the designer. */
export async function progressList(access: CallAccess, { pattern, query, now }: Asked): Promise<ProgressList> {
  const time = await readCallTime(access);
  const { ids, chosen, counts, needs } = await chosenIds(access, { pattern, query, now, time });
  const rows = await progressRows(access, { testerIds: ids, time });
  return {
    ...pageOfList(query.page, chosen),
    ...{ counts, needs, people: rows.map((row) => progressOf(row, pattern, now)) },
  };
}

const chosenSchema = z.object({
  ids: z.array(z.string()),
  chosen: z.number(),
  counts: z.array(z.object({ size: z.string(), state: z.enum(PROGRESS_STATES), many: z.number() })),
  needs: z.partialRecord(z.enum(NEEDS), z.number()),
});

async function chosenIds(
  access: CallAccess,
  { pattern, query, now, time }: Asked & { readonly time: CallTime },
): Promise<z.infer<typeof chosenSchema>> {
  const ownDays = await readOwnDays(access, time);
  const measurements = pattern.measurements.map(({ id }) => id);
  const days = time.dates === null ? null : { swatchBy: time.dates.swatchBy.at, reportBy: time.dates.reportBy.at };
  const { size, needs, page } = query;
  const [row] = await database().$queryRaw<unknown[]>`
    WITH status AS MATERIALIZED (${statusSql({ access, measurements, now, days, ownDays })}),
    chosen AS (
      SELECT * FROM status
      WHERE (${size ?? null}::text IS NULL OR size = ${size ?? null}) AND (${needs ?? null}::text IS NULL OR ${needs ?? null} = ANY (needs))
    ),
    page AS (
      SELECT * FROM chosen ORDER BY urgency, position LIMIT ${ROWS_A_PAGE}
      OFFSET least(${(page - 1) * ROWS_A_PAGE}, (SELECT greatest(count(*) - 1, 0) / ${ROWS_A_PAGE} * ${ROWS_A_PAGE} FROM chosen))
    )
    SELECT
      (SELECT coalesce(jsonb_agg(id ORDER BY urgency, position), '[]') FROM page) AS ids,
      (SELECT count(*)::int FROM chosen) AS chosen,
      (SELECT coalesce(jsonb_agg(counted), '[]')
         FROM (SELECT size, state, count(*) AS many FROM status GROUP BY size, state) AS counted) AS counts,
      (SELECT coalesce(jsonb_object_agg(need, many), '{}')
         FROM (SELECT need, count(*) AS many FROM status, unnest(needs) AS need GROUP BY need) AS counted) AS needs`;
  return chosenSchema.parse(row);
}

/** The days that testers of a call have of their own, each once. */
async function readOwnDays({ callId, pattern }: CallAccess, { timeZone }: CallTime) {
  const rows = await database().$queryRaw<{ dates: unknown }[]>`
    SELECT DISTINCT tester.dates FROM tester JOIN call ON call.id = tester.call_id
    JOIN membership USING (pattern_id)
    WHERE call.id = ${callId}::uuid AND membership.account_id = ${pattern.accountId}::uuid AND tester.dates IS NOT NULL`;
  return rows.map(({ dates }) => {
    const { swatchBy, reportBy } = callDates(testerDatesSchema.parse(dates), timeZone);
    return { dates, swatchBy: swatchBy.at, reportBy: reportBy.at };
  });
}
