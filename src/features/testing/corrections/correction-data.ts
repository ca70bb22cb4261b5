import "server-only";
import type { Place } from "@/engine/instructions";
import { callScope, type CallAccess } from "@/features/calls/access";
import { numberChangesSchema, type NumberChange } from "@/features/calls/correction-schema";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
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

/** A correction as the designer and their helpers see it. */
export interface PublishedCorrection extends Correction {
  /** Ids of the sizes that it concerns; none stands for all. */
  readonly sizes: readonly string[];
  /** Testers at work whom it concerns, and how many of them have read it. */
  readonly testers: number;
  readonly readers: number;
}

/** More than any test has. */
const MAX_SHOWN = 200;

/** They have accepted, and have not stopped. */
const AT_WORK = { acceptedAt: { not: null }, stoppedAt: null } as const satisfies Prisma.TesterWhereInput;

/** The corrections of a call, the newest first. */
export async function publishedCorrections(access: CallAccess): Promise<PublishedCorrection[]> {
  const call = callScope(access);
  const [rows, testers] = await Promise.all([
    database().correction.findMany({
      where: { call },
      orderBy: NEWEST_FIRST,
      take: MAX_SHOWN,
      select: { ...SHOWN, sizes: true, _count: { select: { readBy: { where: { tester: AT_WORK } } } } },
    }),
    database().tester.groupBy({ by: ["size"], where: { call, ...AT_WORK }, _count: true }),
  ]);
  return rows.map(({ sizes, _count, ...row }) => {
    const concerned = testers.filter(({ size }) => sizes.length === 0 || sizes.includes(size));
    const many = concerned.reduce((sum, { _count: ofSize }) => sum + ofSize, 0);
    // Somebody may have changed their size since they read it.
    return { ...toCorrection(row), sizes, testers: many, readers: Math.min(many, _count.readBy) };
  });
}

/** The corrections that concern a tester's size, the newest first. */
export async function correctionsFor(
  access: TesterAccess,
  { size, unread = false }: { readonly size: string; readonly unread?: boolean },
): Promise<Correction[]> {
  const rows = await database().correction.findMany({
    where: {
      call: { testers: { some: testerScope(access) } },
      OR: [{ sizes: { isEmpty: true } }, { sizes: { has: size } }],
      ...(unread ? { readBy: { none: { testerId: access.testerId } } } : {}),
    },
    orderBy: NEWEST_FIRST,
    take: MAX_SHOWN,
    select: SHOWN,
  });
  return rows.map(toCorrection);
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
