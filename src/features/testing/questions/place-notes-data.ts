import "server-only";
import { z } from "zod";
import type { CallAccess } from "@/features/calls/access";
import type { PatternDocument } from "@/engine/pattern";
import { Prisma } from "@/generated/prisma/client";
import { placeSchema } from "@/features/patterns/schema";
import { database } from "@/server/database";
import { pageOfList, type PageOfList } from "@/ui/page-number";
import { groupByPlace, type PlaceGroup } from "./group-by-place";
import type { QuestionsQuery } from "./questions-query";

/*
 * Questions and trouble spots of the written instructions, by place. Only the places of one page are read, and the first few
 * notes of each; the page of one place shows all its notes, page by page.
 */

const PLACES_A_PAGE = 8;
const MAX_SHOWN = 5;
const A_PAGE_OF_ONE_PLACE = 30;
/** The most questions that one answer is given to. */
const MAX_ANSWERED = 200;

const spokenSchema = z.object({ place: placeSchema, revisionNumber: z.int(), waiting: z.int() });

/** A place with notes, and the first revision that contained it. */
type Spoken = z.infer<typeof spokenSchema>;

const noteSchema = z.object({
  id: z.string(),
  createdAt: z.coerce.date(),
  revisionNumber: z.int(),
  /** Null if the tester's row was deleted. */
  tester: z.object({ name: z.string(), size: z.string() }).nullable(),
});

/** A note about a place, as the designer reads it. */
export type PlaceNote = z.infer<typeof noteSchema>;

const threadSchema = z.object({
  key: z.string(),
  answer: z.string().nullable(),
  answeredAt: z.date().nullable(),
  /** Also null if the account was deleted. */
  answeredBy: z.string().nullable(),
  many: z.int(),
  /** The questions that an answer would be for. */
  ids: z.array(z.string()),
  shown: z.array(noteSchema.extend({ asks: z.string() })),
});

/** Questions about one place that wait, or that share an answer. */
export type QuestionThread = z.infer<typeof threadSchema>;

const troubleSchema = z.object({
  key: z.string(),
  testers: z.int(),
  /** Size -> testers. */
  sizes: z.record(z.string(), z.int()),
  many: z.int(),
  shown: z.array(noteSchema.extend({ testerId: z.string(), happened: z.string(), did: z.string() })),
});

/** What went wrong at one place. */
type TroublesOfPlace = z.infer<typeof troubleSchema>;

export interface AskedPlaces extends PageOfList {
  /** Waiting questions of the whole call. */
  readonly waiting: number;
  /** Places with waiting questions first, each group in the order of the text. */
  readonly places: readonly (PlaceGroup<Spoken> & { readonly threads: readonly QuestionThread[] })[];
}

export interface TroubledPlaces extends PageOfList {
  /** Those with most testers first. */
  readonly places: readonly (PlaceGroup<Spoken> & { readonly troubles: TroublesOfPlace })[];
}

/** The part of a list that is read, counted from 1. */
function stretchOf({ at, page }: QuestionsQuery): { readonly from: number; readonly to: number } {
  const take = at === undefined ? MAX_SHOWN : A_PAGE_OF_ONE_PLACE;
  const skip = at === undefined ? 0 : (page - 1) * take;
  return { from: skip + 1, to: skip + take };
}

/** The number of pages of the longest list of one place. */
export function pagesOfPlace(lists: readonly { readonly many: number }[]): number {
  return Math.max(1, ...lists.map(({ many }) => Math.ceil(many / A_PAGE_OF_ONE_PLACE)));
}

/** Joins the call and the viewer's membership. */
function ofCall({ callId, pattern }: CallAccess): Prisma.Sql {
  return Prisma.sql`JOIN call ON call.id = ${callId}::uuid
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid`;
}

/** The places of a page as rows, with the group that each belongs to. */
function spotsSql(groups: readonly PlaceGroup<Spoken>[]): Prisma.Sql {
  const spots = groups.flatMap(({ key, notes }, order) => notes.map(({ place }) => ({ key, place, order })));
  return Prisma.sql`jsonb_to_recordset(${JSON.stringify(spots)}::jsonb) AS spot (key text, place jsonb, "order" int)`;
}

const NOTE = Prisma.sql`'id', notes.id, 'createdAt', notes.created_at, 'revisionNumber', notes.number,
  'tester', CASE WHEN notes.name IS NULL THEN NULL ELSE jsonb_build_object('name', notes.name, 'size', notes.size) END`;

/** A page of the places with questions. */
export async function askedPlaces(
  access: CallAccess,
  { instructions = "" }: Pick<PatternDocument, "instructions">,
  query: QuestionsQuery,
): Promise<AskedPlaces> {
  const spoken = await database().$queryRaw<unknown[]>`
    SELECT place, min(revision.number) AS "revisionNumber", count(*) FILTER (WHERE answer IS NULL)::int AS waiting
    FROM question ${ofCall(access)} JOIN revision ON revision.id = question.revision_id
    WHERE question.call_id = call.id
    GROUP BY place ORDER BY min(question.created_at), place`;
  const groups = groupByPlace(instructions, z.array(spokenSchema).parse(spoken))
    .map((group) => ({ group, waiting: group.notes.reduce((sum, { waiting }) => sum + waiting, 0) }))
    .toSorted((one, other) => Number(other.waiting > 0) - Number(one.waiting > 0));
  const asked = groups.filter(({ group: { key } }) => query.at === undefined || key === query.at);
  const page = pageOfList(query.questions, asked.length, PLACES_A_PAGE);
  const listed = asked.slice(page.skip, page.skip + page.take).map(({ group }) => group);
  const threads = await questionThreads(access, listed, query);
  return {
    ...page,
    waiting: groups.reduce((sum, { waiting }) => sum + waiting, 0),
    places: listed.map((group) => ({ ...group, threads: threads.filter(({ key }) => key === group.key) })),
  };
}

/** The questions of each place: by answer, the earliest first, and last those that wait. */
async function questionThreads(
  access: CallAccess,
  groups: readonly PlaceGroup<Spoken>[],
  query: QuestionsQuery,
): Promise<QuestionThread[]> {
  if (groups.length === 0) return [];
  const { from, to } = stretchOf(query);
  const rows = await database().$queryRaw<unknown[]>`
    WITH notes AS (
      SELECT spot.key, question.id, asks, answer, answered_at, account.name AS answered_by, question.created_at,
        revision.number, tester.size, coalesce(tester_contact.name, tester.code) AS name
      FROM ${spotsSql(groups)} JOIN question ON question.place = spot.place ${ofCall(access)}
      JOIN revision ON revision.id = question.revision_id
      LEFT JOIN tester ON tester.id = question.tester_id
      LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
      LEFT JOIN account ON account.id = question.answered_by_id
      WHERE question.call_id = call.id
    )
    SELECT key, answer, answered_at AS "answeredAt", min(answered_by) AS "answeredBy", count(*)::int AS many,
      to_jsonb((array_agg(id ORDER BY created_at, id))[1:${MAX_ANSWERED}::int]) AS ids,
      to_jsonb((array_agg(jsonb_build_object('asks', asks, ${NOTE}) ORDER BY created_at, id))[${from}::int:${to}::int]) AS shown
    FROM notes GROUP BY key, answer, answered_at ORDER BY answered_at NULLS LAST`;
  return z.array(threadSchema).parse(rows);
}

/** A page of the places where something went wrong. */
export async function troubledPlaces(
  access: CallAccess,
  { instructions = "" }: Pick<PatternDocument, "instructions">,
  query: QuestionsQuery,
): Promise<TroubledPlaces> {
  const spoken = await database().$queryRaw<unknown[]>`
    SELECT place, min(revision.number) AS "revisionNumber", 0 AS waiting
    FROM trouble_spot ${ofCall(access)} JOIN tester ON tester.id = trouble_spot.tester_id
    JOIN revision ON revision.id = trouble_spot.revision_id
    WHERE tester.call_id = call.id
    GROUP BY place ORDER BY min(trouble_spot.created_at), place`;
  const groups = groupByPlace(instructions, z.array(spokenSchema).parse(spoken));
  const found = groups.filter(({ key }) => query.at === undefined || key === query.at);
  const page = pageOfList(query.troubles, found.length, PLACES_A_PAGE);
  const troubles = await troublesOf(access, found, { ...query, ...page });
  return {
    ...page,
    places: troubles.flatMap((each) => {
      const group = found.find(({ key }) => key === each.key);
      return group === undefined ? [] : [{ ...group, troubles: each }];
    }),
  };
}

async function troublesOf(
  access: CallAccess,
  groups: readonly PlaceGroup<Spoken>[],
  { skip, take, ...query }: QuestionsQuery & Pick<PageOfList, "skip" | "take">,
): Promise<TroublesOfPlace[]> {
  if (groups.length === 0) return [];
  const { from, to } = stretchOf(query);
  const rows = await database().$queryRaw<unknown[]>`
    WITH notes AS (
      SELECT spot.key, spot.order, trouble_spot.id, happened, did, trouble_spot.created_at, trouble_spot.tester_id,
        revision.number, tester.size, coalesce(tester_contact.name, tester.code) AS name
      FROM ${spotsSql(groups)} JOIN trouble_spot ON trouble_spot.place = spot.place
      JOIN tester ON tester.id = trouble_spot.tester_id ${ofCall(access)}
      JOIN revision ON revision.id = trouble_spot.revision_id
      LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
      WHERE tester.call_id = call.id
    ),
    by_size AS (SELECT key, "order", size, count(DISTINCT tester_id)::int AS many FROM notes GROUP BY key, "order", size),
    listed AS (
      SELECT key, "order", sum(many)::int AS testers, jsonb_object_agg(size, many) AS sizes FROM by_size
      GROUP BY key, "order" ORDER BY testers DESC, "order" LIMIT ${take} OFFSET ${skip}
    )
    SELECT key, testers, sizes, count(*)::int AS many,
      to_jsonb((array_agg(jsonb_build_object('testerId', tester_id, 'happened', happened, 'did', did, ${NOTE}) ORDER BY created_at, id))[${from}::int:${to}::int]) AS shown
    FROM listed JOIN notes USING (key)
    GROUP BY key, testers, sizes, listed.order ORDER BY testers DESC, listed.order`;
  return z.array(troubleSchema).parse(rows);
}
