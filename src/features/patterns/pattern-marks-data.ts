import "server-only";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { patternScope, type PatternAccess } from "./access";

/** What a pattern is marked as, whatever its revision. */
export interface PatternMarks {
  /** Made up for the demo. */
  readonly isDemo: boolean;
  readonly archivedAt: Date | null;
}

export async function patternMarks(access: PatternAccess): Promise<PatternMarks> {
  const select = { isDemo: true, archivedAt: true } as const;
  const row = await database().pattern.findUnique({ where: patternScope(access), select });
  if (row === null) throw new AppError("not-found");
  return row;
}
