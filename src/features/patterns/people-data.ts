import "server-only";
import { database } from "@/server/database";
import { patternScope, type PatternAccess, type Role } from "./access";

/** Somebody with a part in a pattern. */
export interface Person {
  readonly accountId: string;
  readonly name: string;
  readonly role: Role;
  readonly since: Date;
  /** Texts of hers that came too late for a save still wait for her. */
  readonly hasLateSave: boolean;
}

/** Who has a part in the pattern: the owner, those who may edit, those who may look, each by how long. */
export async function listPeople(access: PatternAccess): Promise<Person[]> {
  const rows = await database().membership.findMany({
    where: { pattern: patternScope(access) },
    orderBy: [{ role: "asc" }, { createdAt: "asc" }],
    select: {
      accountId: true,
      role: true,
      createdAt: true,
      account: {
        select: { name: true, lateSaves: { where: { patternId: access.patternId }, select: { patternId: true } } },
      },
    },
  });
  return rows.map(({ accountId, role, createdAt, account }) => ({
    accountId,
    name: account.name,
    role,
    since: createdAt,
    hasLateSave: account.lateSaves.length > 0,
  }));
}
