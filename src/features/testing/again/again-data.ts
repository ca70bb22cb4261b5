import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import type { PatternDocument } from "@/engine/pattern";
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

/** The newest revision that a tester of the call works from, or has reported on; null where nobody does. */
export async function testedRevision(access: CallAccess): Promise<number | null> {
  const tester = { call: callScope(access) };
  const [assigned, reported] = await Promise.all([
    database().revision.aggregate({ where: { testers: { some: tester } }, _max: { number: true } }),
    database().revision.aggregate({ where: { reports: { some: { tester } } }, _max: { number: true } }),
  ]);
  const numbers = [assigned._max.number, reported._max.number].filter((number) => number !== null);
  return numbers.length === 0 ? null : Math.max(...numbers);
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
