import "server-only";
import { z } from "zod";
import { ownValue, type PatternDocument, type Places } from "@/engine/pattern";
import { bodyRuler, REACH, type RulerMark } from "@/engine/places";
import { callScopeSql, type CallAccess } from "@/features/calls/access";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { pageOfList, type PageOfList } from "@/ui/page-number";
import { wantedSizes, type BoardCounts } from "./application-board";
import type { ListQuery } from "./list-query";

/*
 * The list of applications inside the database: `chosenApplications` and `boardCounts` compute the same from rows that are
 * read. A database test checks that the two agree.
 */

/** Each has a form with three buttons, so a page has fewer rows than other lists. */
export const APPLICATIONS_A_PAGE = 20;

interface Asked {
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly fitBy: readonly string[];
  readonly query: ListQuery;
}

export interface ChosenApplications extends PageOfList {
  /** The applications of the page, the newest first. */
  readonly ids: readonly string[];
  readonly counts: BoardCounts;
}

const countsSchema = z.object({ ids: z.array(z.string()), chosen: z.int(), all: z.int() }).catchall(z.int());

/** A page of the selected applications, and the number of each kind in the whole call. */
export async function chosenPage(access: CallAccess, asked: Asked): Promise<ChosenApplications> {
  const { pattern, places, query } = asked;
  const sizes = wantedSizes(pattern, places);
  const marked = markedSizes(asked);
  const largest = sizes.slice(Math.ceil((2 * sizes.length) / 3)).map(({ id }) => id);
  const [row] = await database().$queryRaw<unknown[]>`
    WITH applied AS MATERIALIZED (${appliedSql(access, asked.fitBy)}),
    chosen AS (SELECT id, position FROM applied WHERE ${chosenSql(asked)}),
    page AS (
      SELECT id, position FROM chosen ORDER BY position DESC LIMIT ${APPLICATIONS_A_PAGE}
      OFFSET least(${(query.page - 1) * APPLICATIONS_A_PAGE},
                   (SELECT greatest(count(*) - 1, 0) / ${APPLICATIONS_A_PAGE} * ${APPLICATIONS_A_PAGE} FROM chosen))
    )
    SELECT
      (SELECT coalesce(jsonb_agg(id ORDER BY position DESC), '[]') FROM page) AS ids,
      (SELECT count(*)::int FROM chosen) AS chosen,
      count(*) FILTER (WHERE kind <> 'withdrawn')::int AS all,
      ${Prisma.join(KINDS.map((kind) => Prisma.sql`count(*) FILTER (WHERE kind = ${kind})::int AS ${Prisma.raw(kind)}`))},
      count(*) FILTER (WHERE ${isLargestSql(marked, largest)})::int AS largest
      ${within(marked)}
    FROM applied`;
  const { ids, chosen, ...many } = countsSchema.parse(row);
  const count = (name: string) => many[name] ?? 0;
  const [from] = sizes.filter(({ id }) => largest.includes(id));
  return {
    ...pageOfList(query.page, chosen, APPLICATIONS_A_PAGE),
    ids,
    counts: {
      byDecision: {
        ...{ all: count("all"), undecided: count("undecided"), yes: count("yes"), maybe: count("maybe") },
        ...{ no: count("no"), withdrawn: count("withdrawn") },
      },
      bySize: sizes.map(({ id: size, label }, index) => ({ size, label, count: count(`within_${index}`) })),
      largest: from && sizes.length > 2 ? { from: from.label, count: count("largest") } : null,
    },
  };
}

const KINDS = ["undecided", "yes", "maybe", "no", "withdrawn"] as const;

const neighboursSchema = z.object({ previous: z.string().nullable(), next: z.string().nullable() });

export type NeighbourIds = z.infer<typeof neighboursSchema>;

/** The neighbours of an application in the selected list; the next of one outside the list is the list's first. */
export async function neighbourIds(access: CallAccess, applicationId: string, asked: Asked): Promise<NeighbourIds> {
  const [row] = await database().$queryRaw<unknown[]>`
    WITH applied AS (${appliedSql(access, asked.fitBy)}),
    chosen AS (SELECT id, position FROM applied WHERE ${chosenSql(asked)}),
    beside AS (
      SELECT id, lag(id) OVER newest AS previous, lead(id) OVER newest AS next FROM chosen
      WINDOW newest AS (ORDER BY position DESC)
    )
    SELECT previous, next FROM beside WHERE id = ${applicationId}::uuid
    UNION ALL
    (SELECT NULL, id FROM chosen WHERE NOT EXISTS (SELECT FROM beside WHERE id = ${applicationId}::uuid)
     ORDER BY position DESC LIMIT 1)`;
  return row === undefined ? { previous: null, next: null } : neighboursSchema.parse(row);
}

/** All applications, each with the lengths that decide the size: `cm_0`, `cm_1` and so on. */
function appliedSql(access: CallAccess, fitBy: readonly string[]): Prisma.Sql {
  const lengths = fitBy.map(
    (id, index) => Prisma.sql`, (body.measurements ->> ${id})::float8 AS ${Prisma.raw(`cm_${index}`)}`,
  );
  return Prisma.sql`
    SELECT application.id, application.position,
      CASE WHEN withdrawn_at IS NULL THEN coalesce(decision::text, 'undecided') ELSE 'withdrawn' END AS kind
      ${Prisma.join([Prisma.empty, ...lengths], " ")}
    FROM application
    LEFT JOIN application_body AS body ON body.application_id = application.id AND withdrawn_at IS NULL
    WHERE application.call_id = ${access.callId}::uuid AND ${callScopeSql(access)}`;
}

function chosenSql(asked: Asked): Prisma.Sql {
  const { decision, size } = asked.query;
  const kind = decision === "all" ? Prisma.sql`kind <> 'withdrawn'` : Prisma.sql`kind = ${decision}`;
  if (size === undefined) return kind;
  const found = markedSizes(asked).find(({ id }) => id === size);
  return found === undefined ? Prisma.sql`false` : Prisma.sql`${kind} AND ${isWithinSql(found.marks)}`;
}

interface MarkedSize {
  readonly id: string;
  readonly marks: readonly RulerMark[];
}

/** The sizes with spots and their marks on the ruler of bodies; none if nothing decides the size. */
function markedSizes({ pattern, places, fitBy }: Asked): readonly MarkedSize[] {
  const isKnown =
    fitBy.length > 0 && fitBy.every((id) => pattern.sizes.every(({ body }) => ownValue(body, id) !== undefined));
  if (!isKnown) return [];
  const ruler = bodyRuler({ pattern, fitBy: [...fitBy] });
  const wanted = new Set(wantedSizes(pattern, places).map(({ id }) => id));
  return pattern.sizes.flatMap(({ id }, index) => (wanted.has(id) ? [{ id, marks: ruler[index] ?? [] }] : []));
}

/** The body in half distances to the neighbouring size, as `fitInSize` computes it. */
function distanceSql({ bodyCm, halfBelowCm, halfAboveCm }: RulerMark, index: number): Prisma.Sql {
  const cm = Prisma.raw(`cm_${index}`);
  return Prisma.sql`((${cm} - ${bodyCm}::float8) / CASE WHEN ${cm} < ${bodyCm}::float8 THEN ${halfBelowCm}::float8 ELSE ${halfAboveCm}::float8 END)`;
}

function isWithinSql(marks: readonly RulerMark[]): Prisma.Sql {
  return Prisma.join(
    marks.map((mark, index) => Prisma.sql`abs(${distanceSql(mark, index)}) <= ${REACH}::float8`),
    " AND ",
  );
}

function within(marked: readonly MarkedSize[]): Prisma.Sql {
  const counts = marked.map(
    ({ marks }, index) =>
      Prisma.sql`, count(*) FILTER (WHERE ${isWithinSql(marks)})::int AS ${Prisma.raw(`within_${index}`)}`,
  );
  return Prisma.join([Prisma.empty, ...counts], " ");
}

/** Nearest to one of these sizes; of two equally near sizes the smaller counts. */
function isLargestSql(marked: readonly MarkedSize[], largest: readonly string[]): Prisma.Sql {
  const [smaller, larger] = [false, true].map((isLarge) =>
    marked.filter(({ id }) => largest.includes(id) === isLarge).map(({ marks }) => misfitSql(marks)),
  );
  if (smaller === undefined || larger === undefined || larger.length === 0) return Prisma.sql`false`;
  if (smaller.length === 0) return Prisma.sql`cm_0 IS NOT NULL`;
  return Prisma.sql`least(${Prisma.join(larger)}) < least(${Prisma.join(smaller)})`;
}

function misfitSql(marks: readonly RulerMark[]): Prisma.Sql {
  return Prisma.join(
    marks.map((mark, index) => Prisma.sql`${distanceSql(mark, index)} ^ 2`),
    " + ",
  );
}
