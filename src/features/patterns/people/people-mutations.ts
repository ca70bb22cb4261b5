import "server-only";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { patternOwnerScope, patternScope, type HelperRole, type PatternAccess } from "../access";

const HELPER = { not: "owner" } as const;

/** Changes a helper's role. @throws {AppError} "not-found" where they have no role any more. */
export async function changeRole(access: PatternAccess, accountId: string, role: HelperRole): Promise<void> {
  const { count } = await database().membership.updateMany({
    where: { accountId, role: HELPER, pattern: patternOwnerScope(access) },
    data: { role },
  });
  if (count === 0) throw gone();
}

/** Removes a helper. What they saved stays, and so do their conflicting edits: see `conflictingDraftOf`. @throws {AppError} "not-found". */
export async function removePerson(access: PatternAccess, accountId: string): Promise<void> {
  const { count } = await database().membership.deleteMany({
    where: { accountId, role: HELPER, pattern: patternOwnerScope(access) },
  });
  if (count === 0) throw gone();
}

/** Lets the viewer leave; an owner cannot. @throws {AppError} "not-allowed". */
export async function leavePattern(access: PatternAccess): Promise<void> {
  const { count } = await database().membership.deleteMany({
    where: { accountId: access.accountId, role: HELPER, pattern: patternScope(access) },
  });
  if (count === 0) throw new AppError("not-allowed", "The owner cannot leave the pattern.");
}

function gone(): AppError {
  return new AppError("not-found", "This helper has left or was removed in the meantime. Reload the page.");
}
