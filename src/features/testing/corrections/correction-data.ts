import "server-only";
import type { Place } from "@/engine/instructions";
import { answeredCounts, CORRECTION_ANSWERS, type CorrectionAnswer } from "@/engine/reporting";
import { callScope, type CallAccess } from "@/features/calls/access";
import { numberChangesSchema, workedCountsSchema, type NumberChange } from "@/features/calls/correction-schema";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import { Prisma } from "@/generated/prisma/client";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { z } from "zod";
import { placeSchema } from "../questions/schema";

/** A correction as its readers see it. */
export interface Correction {
  readonly correctionId: string;
  readonly text: string;
  /** The passages that it concerns, in the words of its revision. */
  readonly places: readonly Place[];
  /** The counts that it changes, size by size. */
  readonly numbers: readonly NumberChange[];
  readonly revisionNumber: number;
  readonly createdAt: Date;
  /** Also null if the account was deleted. */
  readonly author: string | null;
}

/** How somebody whom a correction concerns stands to it: their answer, or none yet; whoever has finished is told, and may have read it. */
const STANDINGS = ["unanswered", ...CORRECTION_ANSWERS, "told", "read"] as const;

export interface AnswerGroup {
  readonly standing: (typeof STANDINGS)[number];
  readonly many: number;
  /** The first of them, in the order of the call. */
  readonly names: readonly string[];
}

/** A correction as the designer and their helpers see it. */
export interface PublishedCorrection extends Correction {
  /** Ids of the sizes that it concerns; none stands for all. */
  readonly sizes: readonly string[];
  /** The number of the revision that took it in; null while it is open. */
  readonly takenIn: number | null;
  /** Testers at work whom it concerns, by what they answered; none that nobody is in. */
  readonly groups: readonly AnswerGroup[];
}

/** More than any test has. */
const MAX_SHOWN = 200;

/** Names that are listed of one group. */
const MAX_NAMES = 12;

/** The corrections of a call, the newest first. */
export async function publishedCorrections(access: CallAccess): Promise<PublishedCorrection[]> {
  const [rows, groups] = await Promise.all([
    database().correction.findMany({
      where: { call: callScope(access) },
      orderBy: NEWEST_FIRST,
      take: MAX_SHOWN,
      select: { ...SHOWN, sizes: true, takenIn: { select: { number: true } } },
    }),
    answerGroups(access),
  ]);
  return rows.map(({ sizes, takenIn, ...row }) => ({
    ...toCorrection(row),
    sizes,
    takenIn: takenIn?.number ?? null,
    groups: groups.filter(({ correctionId }) => correctionId === row.id),
  }));
}

/** @returns the earliest first. */
export async function readCorrections(
  connection: Connection,
  where: Prisma.CorrectionWhereInput,
): Promise<Correction[]> {
  const rows = await connection.correction.findMany({ where, orderBy: NEWEST_FIRST, take: MAX_SHOWN, select: SHOWN });
  return rows.map(toCorrection).toReversed();
}

/** A call of a pattern with corrections that no revision has taken in. */
export interface CallWithOpen {
  readonly callId: string;
  readonly title: string;
  readonly many: number;
}

export async function openCorrections(access: PatternAccess): Promise<CallWithOpen[]> {
  const open = { takenInId: null };
  const rows = await database().call.findMany({
    where: { pattern: patternScope(access), corrections: { some: open } },
    orderBy: { createdAt: "desc" },
    select: { id: true, title: true, _count: { select: { corrections: { where: open } } } },
  });
  return rows.map(({ id, title, _count }) => ({ callId: id, title, many: _count.corrections }));
}

const groupsSchema = z.array(
  z.object({ correctionId: z.string(), standing: z.enum(STANDINGS), many: z.int(), names: z.array(z.string()) }),
);

async function answerGroups(access: CallAccess) {
  const rows = await database().$queryRaw<unknown[]>`
    WITH standings AS (${standingsSql(access)})
    SELECT correction_id AS "correctionId", standing, count(*)::int AS many,
      (array_agg(name ORDER BY position))[1:${MAX_NAMES}::int] AS names
    FROM standings GROUP BY correction_id, standing`;
  const order = (standing: AnswerGroup["standing"]) => STANDINGS.indexOf(standing);
  return groupsSchema.parse(rows).toSorted((left, right) => order(left.standing) - order(right.standing));
}

/** How many testers have not answered a correction that asks them. */
export async function unansweredTesters(access: CallAccess): Promise<number> {
  const [row] = await database().$queryRaw<{ many: number }[]>`
    WITH standings AS (${standingsSql(access)})
    SELECT count(DISTINCT tester_id)::int AS many FROM standings WHERE standing = 'unanswered'`;
  return row?.many ?? 0;
}

/**
 * A query of every correction of a call with every tester at work whom it concerns. They have finished, by the rule of
 * `hasReportedAll`, where every measurement of their revision is answered; nobody answers once the call is closed.
 */
function standingsSql({ callId, pattern }: CallAccess): Prisma.Sql {
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
        SELECT revision.id, array(SELECT jsonb_array_elements(revision.document -> 'measurements') ->> 'id') AS ids
        FROM revision WHERE revision.pattern_id = ${pattern.patternId}::uuid OFFSET 0
      ) AS measured ON measured.id = tester.revision_id
      WHERE tester.call_id = ${callId}::uuid AND tester.accepted_at IS NOT NULL AND tester.stopped_at IS NULL
      OFFSET 0
    ) AS tester ON correction.sizes = '{}' OR tester.size = ANY (correction.sizes)
    LEFT JOIN correction_answer AS answered ON answered.correction_id = correction.id AND answered.tester_id = tester.id
    LEFT JOIN correction_read AS seen ON seen.correction_id = correction.id AND seen.tester_id = tester.id
    WHERE correction.call_id = ${callId}::uuid`;
}

/** A correction as a tester sees it, and how they deal with it. */
export interface TesterCorrection extends Correction {
  readonly isRead: boolean;
  /** Null until they answer. */
  readonly answer: CorrectionAnswer | null;
  /** Count → the number that they confirmed to have worked, where they keep the old one; null until then. */
  readonly worked: Readonly<Record<string, number>> | null;
  /** Count → the old number for them: by their answers to earlier corrections, else as the correction has it. */
  readonly before: Readonly<Record<string, number>>;
}

/** Where clause of the corrections that concern a size; one that names none concerns all. */
export function ofSize(size: string): Prisma.CorrectionWhereInput {
  return { OR: [{ sizes: { isEmpty: true } }, { sizes: { has: size } }] };
}

/** The corrections that concern a tester's size, the newest first. */
export async function correctionsFor(
  access: TesterAccess,
  { size }: { readonly size: string },
): Promise<TesterCorrection[]> {
  const { testerId } = access;
  const rows = await database().correction.findMany({
    where: { call: { testers: { some: testerScope(access) } }, ...ofSize(size) },
    orderBy: NEWEST_FIRST,
    take: MAX_SHOWN,
    select: {
      ...SHOWN,
      readBy: { where: { testerId }, select: { testerId: true } },
      answers: { where: { testerId }, select: { answer: true, worked: true } },
    },
  });
  const corrections = rows.map(({ readBy, answers: [answered], ...row }) => ({
    ...toCorrection(row),
    isRead: readBy.length > 0,
    answer: answered?.answer ?? null,
    worked: answered?.worked == null ? null : workedCountsSchema.parse(answered.worked),
  }));
  return corrections.map((correction, index) => ({
    ...correction,
    before: numbersBefore(correction.numbers, size, corrections.slice(index + 1)),
  }));
}

/** @param earlier corrections, the newest first. */
function numbersBefore(
  numbers: readonly NumberChange[],
  size: string,
  earlier: readonly Omit<TesterCorrection, "before">[],
): Record<string, number> {
  const answered = earlier.flatMap(({ answer, ...rest }) => (answer === null ? [] : [{ ...rest, answer }]));
  const told = answeredCounts(size, answered.toReversed());
  const own = numbers.filter((number) => number.size === size);
  return Object.fromEntries(own.map(({ count, was }) => [count, told.get(count) ?? was]));
}

const NEWEST_FIRST = [{ createdAt: "desc" }, { id: "desc" }] satisfies Prisma.CorrectionOrderByWithRelationInput[];

const SHOWN = {
  ...{ id: true, text: true, place: true, morePlaces: true, numbers: true, createdAt: true },
  revision: { select: { number: true } },
  author: { select: { name: true } },
} as const;

type Row = Prisma.CorrectionGetPayload<{ select: typeof SHOWN }>;

function toCorrection({ id, place, morePlaces, numbers, revision, author, text, createdAt }: Row): Correction {
  return {
    ...{ correctionId: id, text, createdAt },
    places: [...(place === null ? [] : [placeSchema.parse(place)]), ...z.array(placeSchema).parse(morePlaces)],
    numbers: numberChangesSchema.parse(numbers),
    revisionNumber: revision.number,
    author: author?.name ?? null,
  };
}
