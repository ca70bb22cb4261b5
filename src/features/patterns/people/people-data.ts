import "server-only";
import { database } from "@/server/database";
import { patternScope, type PatternAccess, type Role } from "../access";

/** A person with a role in a pattern. */
export interface Person {
  readonly accountId: string;
  readonly name: string;
  readonly role: Role;
  readonly since: Date;
  /** Whether they have unresolved conflicting edits. */
  readonly hasConflictingDraft: boolean;
}

/** Everyone with a role in the pattern: the owner, editors, viewers, each group by how long they have been in it. */
export async function listPeople(access: PatternAccess): Promise<Person[]> {
  const rows = await database().membership.findMany({
    where: { pattern: patternScope(access) },
    orderBy: [{ role: "asc" }, { createdAt: "asc" }],
    select: {
      accountId: true,
      role: true,
      createdAt: true,
      account: {
        select: {
          name: true,
          conflictingDrafts: { where: { patternId: access.patternId }, select: { patternId: true } },
        },
      },
    },
  });
  return rows.map(({ accountId, role, createdAt, account }) => ({
    accountId,
    name: account.name,
    role,
    since: createdAt,
    hasConflictingDraft: account.conflictingDrafts.length > 0,
  }));
}
