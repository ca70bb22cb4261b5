import "server-only";
import { patternOwnerScope, type PatternAccess } from "@/features/patterns/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { patternsToDelete, runningTests, type OwnPattern, type RunningTest } from "../account-data/deletion-data";

/** What goes with a pattern, and what stands against deleting it. */
export interface PatternDeletion {
  readonly pattern: OwnPattern;
  readonly running: readonly RunningTest[];
}

/** @throws {AppError} "not-found" if it is deleted, or not the viewer's own. */
export async function patternDeletion(access: PatternAccess): Promise<PatternDeletion> {
  const where = patternOwnerScope(access);
  const [[pattern], running] = await Promise.all([patternsToDelete(where), runningTests(database(), where)]);
  if (pattern === undefined) throw new AppError("not-found");
  return { pattern, running };
}
