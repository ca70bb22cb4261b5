import "server-only";
import { callScope, countedCalls, type CallAccess } from "@/features/calls/access";
import { earlierTesterId, testerIdOfEarlier } from "@/features/calls/earlier-tester-computed";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";

/** What names a tester in results. */
export const NAMED = {
  ...{ id: true, code: true, callId: true },
  call: { select: { title: true } },
  contact: { select: { name: true } },
} satisfies Prisma.TesterSelect;

/** A tester with what names them; no name where there is none. */
export interface NamedRow extends Pick<
  Prisma.TesterGetPayload<{ select: typeof NAMED }>,
  "id" | "code" | "callId" | "call"
> {
  readonly contact: { readonly name: string | null } | null;
}

/**
 * SQL for the rows of testers by their ids in an analysis, with what names them: of the call itself, and of earlier ones of its
 * pattern that it counts too. The ids are one parameter: a list of them would be planned anew for each page, which takes longer
 * than finding the testers.
 */
export function namedTestersSql({ callId, pattern }: CallAccess, ids: readonly string[]): Prisma.Sql {
  const codes = [...new Set(ids)];
  const earlier = ids.flatMap((id) => testerIdOfEarlier(id) ?? []);
  // Without an OR, PostgreSQL finds them by an index.
  const own = Prisma.sql`tester.call_id = ${callId}::uuid AND tester.code = ANY (${codes}::text[])`;
  return Prisma.sql`
    SELECT tester.id, tester.code, tester.call_id AS "callId", jsonb_build_object('title', call.title) AS call,
      jsonb_build_object('name', tester_contact.name) AS contact
    FROM tester
    JOIN call ON call.id = tester.call_id AND call.pattern_id = ${pattern.patternId}::uuid
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
    LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
    WHERE ${earlier.length === 0 ? own : Prisma.sql`(${own} OR tester.id = ANY (${earlier}::uuid[]))`}`;
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
