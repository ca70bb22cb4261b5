import "server-only";
import { z } from "zod";
import type { EngineTask } from "@/engine/engine-task";
import { shownHabitsSchema } from "@/engine/pattern";
import { callEditScope, teachingCalls, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { log } from "@/server/log";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { firstRevisionCall } from "@/features/calls/prior-data";
import { inTransaction } from "@/server/transaction";

const shownSchema = z.array(z.tuple([z.string(), shownHabitsSchema]));

/** A tester who has sent their first report, and the same person in an earlier test. */
interface Returning {
  readonly testerId: string;
  readonly fromId: string;
  /** Their id in the earlier test's document. */
  readonly code: string;
}

/**
 * Keeps with testers who have sent their first report what their own earlier tests with the same designer show of their tapes and
 * garments, where they allow it; later it stays as it is. The worker does it before the analysis that is the first to read it.
 *
 * @param access of the designer, who owns the pattern.
 */
export async function learnHabits(access: CallAccess, run: RunTask<EngineTask>): Promise<void> {
  const reported = await newlyReported(access);
  if (reported.length === 0) return;
  const rows: { testerId: string; fromId: string; shown: z.infer<typeof shownHabitsSchema> }[] = [];
  const before = new Date(Math.max(...reported.map(({ at }) => at.getTime())));
  for (const earlier of await teachingCalls(access, { before, connection: database() })) {
    const returning = await returningTo(earlier, reported);
    if (returning.length === 0) continue;
    const shown = await shownIn(earlier, { codes: returning.map(({ code }) => code), run });
    for (const { code, ...pair } of returning) {
      const habits = shown.get(code);
      if (habits !== undefined) rows.push({ ...pair, shown: habits });
    }
  }
  await keep(access, { reported: reported.map(({ testerId }) => testerId), rows });
}

interface Reported {
  readonly testerId: string;
  readonly accountId: string | null;
  /** When their first report was sent. */
  readonly at: Date;
}

async function newlyReported(access: CallAccess): Promise<Reported[]> {
  const rows = await database().tester.findMany({
    where: { call: callEditScope(access), habitsReadAt: null, reports: { some: {} } },
    select: {
      ...{ id: true, accountId: true },
      reports: { orderBy: { createdAt: "asc" }, take: 1, select: { createdAt: true } },
    },
  });
  return rows.flatMap(({ id: testerId, accountId, reports: [first] }) =>
    first === undefined ? [] : [{ testerId, accountId, at: first.createdAt }],
  );
}

/** Those of them who reported in an earlier test before, and allow that it is used. */
async function returningTo(earlier: CallAccess, reported: readonly Reported[]): Promise<Returning[]> {
  const byAccount = new Map(
    reported.flatMap((tester) => (tester.accountId === null ? [] : [[tester.accountId, tester]])),
  );
  const rows = await database().tester.findMany({
    where: {
      call: callEditScope(earlier),
      accountId: { in: [...byAccount.keys()] },
      habitsSince: { not: null },
      reports: { some: {} },
    },
    select: {
      ...{ id: true, code: true, accountId: true, habitsSince: true },
      reports: { orderBy: { createdAt: "asc" }, take: 1, select: { createdAt: true } },
    },
  });
  return rows.flatMap(({ id: fromId, code, accountId, habitsSince, reports: [first] }) => {
    const later = byAccount.get(accountId ?? "");
    if (later === undefined || habitsSince === null || first === undefined) return [];
    return first.createdAt < later.at && habitsSince < later.at ? [{ testerId: later.testerId, fromId, code }] : [];
  });
}

/** What an earlier test shows of some of its testers; nothing where it cannot be read, or not be computed with in time. */
async function shownIn(
  earlier: CallAccess,
  { codes, run }: { readonly codes: readonly string[]; readonly run: RunTask<EngineTask> },
): Promise<ReadonlyMap<string, z.infer<typeof shownHabitsSchema>>> {
  try {
    const call = await firstRevisionCall(earlier, database());
    const printed = call === null ? null : await run({ kind: "habits", call, testers: codes });
    return new Map(printed === null ? [] : shownSchema.parse(JSON.parse(printed)));
  } catch (error) {
    if (error instanceof TaskInterrupted || isDatabaseUnavailable(error)) throw error;
    log.error({ callId: earlier.callId }, "an earlier test shows nothing of its testers");
    return new Map();
  }
}

/** Consent that was withdrawn meanwhile counts. */
async function keep(
  access: CallAccess,
  {
    reported,
    rows,
  }: {
    readonly reported: readonly string[];
    readonly rows: readonly { testerId: string; fromId: string; shown: z.infer<typeof shownHabitsSchema> }[];
  },
): Promise<void> {
  const { accountId } = access.pattern;
  const ofSameOwner = { pattern: { memberships: { some: { accountId, role: "owner" } } } } as const;
  await inTransaction(async (transaction) => {
    const allowed = await transaction.tester.findMany({
      where: { id: { in: rows.map(({ fromId }) => fromId) }, habitsSince: { not: null }, call: ofSameOwner },
      select: { id: true },
    });
    const from = new Set(allowed.map(({ id }) => id));
    const { count } = await transaction.tester.updateMany({
      where: { call: callEditScope(access), id: { in: [...reported] }, habitsReadAt: null },
      data: { habitsReadAt: new Date() },
    });
    if (count === reported.length)
      await transaction.testerHabit.createMany({ data: rows.filter(({ fromId }) => from.has(fromId)) });
  });
}
