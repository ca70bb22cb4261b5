import "server-only";
import { z } from "zod";
import { patternEditScope, type PatternAccess } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { readGradingOutcome, type GradingAnswer } from "./schema";

const STOPPED = "You stopped this grading. What you typed stands as it was.";
const LATE =
  "This grading took too long and was stopped. What you typed stands as it was; lock some numbers or take out a tie, and it will go faster.";
const UNANSWERED =
  "There is still no answer to this grading, and none is likely to come. What you typed stands as it was; ask for it again.";

/** Longer than a task is let run, twice over. */
const UNANSWERED_AFTER_MS = 400_000;

const FAILED =
  "This could not be calculated, and it is our mistake. Your numbers are saved as they are; type what you know, and try again.";

/** The grading that the viewer herself asked for. @throws {AppError} "not-found" */
export async function gradingAnswer(access: PatternAccess, gradingId: string): Promise<GradingAnswer> {
  const row = await database().grading.findFirst({
    where: ownGrading(access, gradingId),
    select: { status: true, output: true, createdAt: true },
  });
  if (row === null) throw new AppError("not-found");
  switch (row.status) {
    case "waiting":
      return Date.now() - row.createdAt.getTime() > UNANSWERED_AFTER_MS
        ? { status: "stopped", says: UNANSWERED }
        : { status: "waiting" };
    case "stopped":
      return { status: "stopped", says: STOPPED };
    case "late":
      return { status: "stopped", says: LATE };
    case "failed":
      return { status: "stopped", says: FAILED };
    case "done":
      return { status: "done", outcome: readGradingOutcome(row.output ?? "") };
  }
}

/** Where clause of a grading that the proved person asked for. @throws {AppError} "not-found" for what is no id. */
export function ownGrading(access: PatternAccess, gradingId: string): Prisma.GradingWhereUniqueInput {
  if (!z.uuid().safeParse(gradingId).success) throw new AppError("not-found");
  return { id: gradingId, accountId: access.accountId, pattern: patternEditScope(access) };
}
