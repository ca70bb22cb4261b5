import "server-only";
import { callScope, countedCalls, type CallAccess } from "@/features/calls/access";
import { earlierTesterId, testerIdOfEarlier } from "@/features/calls/earlier-tester-computed";
import { patternScope } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";

/** What names a tester in results. */
export const NAMED = {
  ...{ id: true, code: true, callId: true },
  call: { select: { title: true } },
  contact: { select: { name: true } },
} satisfies Prisma.TesterSelect;

type NamedRow = Prisma.TesterGetPayload<{ select: typeof NAMED }>;

/** Where clause of testers by their ids in an analysis: of the call itself, and of earlier ones of its pattern that it counts too. */
export function testersById(access: CallAccess, ids: readonly string[]): Prisma.TesterWhereInput {
  const own = { call: callScope(access), code: { in: [...new Set(ids)] } };
  const earlier = ids.flatMap((id) => testerIdOfEarlier(id) ?? []);
  // Without an OR, PostgreSQL finds them by an index.
  if (earlier.length === 0) return own;
  return { OR: [own, { call: { pattern: patternScope(access.pattern) }, id: { in: earlier } }] };
}

/** A tester's id in an analysis of a call, and their name; with the test's, where that is an earlier one. */
export function namedTester(
  { callId }: Pick<CallAccess, "callId">,
  { id, code, contact, call, ...tester }: NamedRow,
): { tester: string; name: string } {
  const name = contact?.name ?? code;
  if (tester.callId === callId) return { tester: code, name };
  return { tester: earlierTesterId(id), name: `${name} (${call.title})` };
}

/**
 * The test in which a tester of an analysis reported, and their code there.
 *
 * @throws {AppError} "not-found" where it counts no such tester.
 */
export async function reportedIn(access: CallAccess, id: string): Promise<{ access: CallAccess; tester: string }> {
  const testerId = testerIdOfEarlier(id);
  if (testerId === null) return { access, tester: id };
  for (const earlier of await countedCalls(access)) {
    const row = await database().tester.findFirst({
      where: { id: testerId, call: callScope(earlier) },
      select: { code: true },
    });
    if (row !== null) return { access: earlier, tester: row.code };
  }
  throw new AppError("not-found");
}
