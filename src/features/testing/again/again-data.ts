import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import type { PatternDocument } from "@/engine/pattern";
import { carriedOver } from "@/engine/revision";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { revisionById } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";

/** The call that this one follows; null where it follows none. */
export async function followedCall(
  access: CallAccess,
): Promise<{ readonly callId: string; readonly title: string } | null> {
  const row = await database().call.findUnique({
    where: callScope(access),
    select: { follows: { select: { id: true, title: true } } },
  });
  return row?.follows == null ? null : { callId: row.follows.id, title: row.follows.title };
}

/** What of the earlier test's reports cannot be compared with the pattern as it is now: labels, in its order. */
export interface NotCarried {
  readonly sizes: readonly string[];
  readonly measurements: readonly string[];
  readonly yarn: boolean;
}

/** The pieces of the pattern, and which of them the call's testers make; none stands for all. */
export async function chosenPieces(access: CallAccess, { garment }: Pick<PatternDocument, "garment">) {
  const call = await database().call.findUnique({ where: callScope(access), select: { pieces: true } });
  return garment.pieces.map(({ id, label }) => ({ id, label, isChosen: call?.pieces.includes(id) ?? false }));
}

/** Whether the reports of the call that this one follows count in its results too, and what of them cannot. */
export async function countsEarlier(access: CallAccess, pattern: PatternDocument) {
  const call = callScope(access);
  const row = await database().call.findUnique({ where: call, select: { countsEarlier: true } });
  const notCarried = await notCarriedFrom(access.pattern, { followedBy: { some: call } }, { pattern });
  return { isCounted: row?.countsEarlier ?? false, notCarried };
}

/** @param call the earlier one, of the proved pattern. */
export async function notCarriedFrom(
  access: PatternAccess,
  call: Prisma.CallWhereInput,
  { pattern, connection = database() }: { readonly pattern: PatternDocument; readonly connection?: Connection },
): Promise<NotCarried> {
  const followed = await connection.revision.findMany({
    where: { pattern: patternScope(access), reports: { some: { tester: { call } } } },
    orderBy: { number: "asc" },
    select: { id: true },
  });
  const sizes = new Set<string>();
  const measurements = new Set(pattern.measurements);
  let yarn = false;
  for (const { id } of followed) {
    const { document: earlier } = await revisionById(access, id, connection);
    const carried = carriedOver(earlier, pattern);
    const kept = new Set(carried.sizes.map((size) => size.id));
    earlier.sizes.filter((size) => !kept.has(size.id)).forEach(({ label }) => sizes.add(label));
    carried.measurements.forEach((measurement) => measurements.delete(measurement));
    yarn ||= !carried.yarn;
  }
  const labels = followed.length === 0 ? [] : [...measurements].map(({ letter, label }) => `${letter} ${label}`);
  return { sizes: [...sizes], measurements: labels, yarn };
}

/** The newest revision that a tester of the call works from, or has reported on; null where nobody does. */
export async function testedRevision(access: CallAccess): Promise<number | null> {
  const tester = { call: callScope(access) };
  const { _max: newest } = await database().revision.aggregate({
    where: {
      pattern: patternScope(access.pattern),
      OR: [{ testers: { some: tester } }, { reports: { some: { tester } } }],
    },
    _max: { number: true },
  });
  return newest.number;
}

/** A tester of the call that this one follows. */
export type EarlierTester = Prisma.TesterGetPayload<{ select: typeof EARLIER }>;

/**
 * Who accepted in the call that this one follows, did not stop, and is in this one neither as tester nor as applicant, by
 * their account or address; without those whose size the pattern no longer has.
 */
export async function earlierTesters(
  access: CallAccess,
  { sizes }: Pick<PatternDocument, "sizes">,
  connection: Connection = database(),
): Promise<EarlierTester[]> {
  const call = callScope(access);
  const rows = await connection.tester.findMany({
    where: {
      ...{ call: { followedBy: { some: call } }, acceptedAt: { not: null }, stoppedAt: null },
      ...{ contact: { isNot: null }, size: { in: sizes.map(({ id }) => id) } },
    },
    orderBy: { position: "asc" },
    select: EARLIER,
  });
  const testers = await connection.tester.findMany({ where: { call }, select: KNOWN });
  const applications = await connection.application.findMany({ where: { call, withdrawnAt: null }, select: KNOWN });
  const here = [...testers, ...applications];
  const addresses = new Set(here.flatMap(({ contact }) => contact?.email?.toLowerCase() ?? []));
  const accounts = new Set(here.flatMap(({ accountId }) => accountId ?? []));
  return rows.filter(
    ({ accountId, contact }) =>
      !(accountId !== null && accounts.has(accountId)) && !addresses.has(contact?.email?.toLowerCase() ?? ""),
  );
}

const KNOWN = { accountId: true, contact: { select: { email: true } } } as const;

const EARLIER = {
  ...{ id: true, size: true, accountId: true, unit: true, terms: true, timeZone: true, sizesShown: true },
  ...{ isWornByChild: true, reportedAt: true },
  contact: { select: { name: true, email: true } },
  body: { select: { measurements: true } },
} as const;
