import "server-only";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { patternOwnerScope, patternScope, type HelperRole, type PatternAccess } from "./access";

const HELPER = { not: "owner" } as const;

/** Lets a helper edit, or only look. @throws {AppError} "not-found" where she has no part any more. */
export async function changeRole(access: PatternAccess, accountId: string, role: HelperRole): Promise<void> {
  const { count } = await database().membership.updateMany({
    where: { accountId, role: HELPER, pattern: patternOwnerScope(access) },
    data: { role },
  });
  if (count === 0) throw gone();
}

/** Takes a helper's part away. What she saved stays, and so does what waits for her: see `lateSaveOf`. @throws {AppError} "not-found". */
export async function removePerson(access: PatternAccess, accountId: string): Promise<void> {
  const { count } = await database().membership.deleteMany({
    where: { accountId, role: HELPER, pattern: patternOwnerScope(access) },
  });
  if (count === 0) throw gone();
}

/** Gives the viewer's own part back; an owner's cannot be. @throws {AppError} "not-allowed". */
export async function leavePattern(access: PatternAccess): Promise<void> {
  const { count } = await database().membership.deleteMany({
    where: { accountId: access.accountId, role: HELPER, pattern: patternScope(access) },
  });
  if (count === 0) throw new AppError("not-allowed", "The owner cannot leave the pattern.");
}

function gone(): AppError {
  return new AppError("not-found", "This helper has left meanwhile, or has been removed. Reload the page.");
}
