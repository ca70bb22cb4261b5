import "server-only";
import type { Place } from "@/engine/instructions";
import { answeredCounts, type CorrectionAnswer } from "@/engine/reporting";
import { callScope, type CallAccess } from "@/features/calls/access";
import { numberChangesSchema, workedCountsSchema, type NumberChange } from "@/features/calls/correction-schema";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import type { Prisma } from "@/generated/prisma/client";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { placeSchema } from "@/features/patterns/schema";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { z } from "zod";
import { answerGroups, type AnswerGroup } from "./correction-standings-data";

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

/** The corrections of a call, the newest first. */
export async function publishedCorrections(access: CallAccess): Promise<PublishedCorrection[]> {
  const rows = await database().correction.findMany({
    where: { call: callScope(access) },
    orderBy: NEWEST_FIRST,
    take: MAX_SHOWN,
    select: { ...SHOWN, sizes: true, takenIn: { select: { number: true } } },
  });
  const groups = rows.length === 0 ? [] : await answerGroups(access);
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

/** Where clause of the corrections that concern a size, and of one that is read the same in code; one that names none concerns all. */
export function ofSize(size: string): Prisma.CorrectionWhereInput {
  return { OR: [{ sizes: { isEmpty: true } }, { sizes: { has: size } }] };
}

export function concernsSize({ sizes }: { readonly sizes: readonly string[] }, size: string): boolean {
  return sizes.length === 0 || sizes.includes(size);
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
