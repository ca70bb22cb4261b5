import "server-only";
import { z } from "zod";
import { patternEditScope, type PatternAccess } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { readGradingOutcome, type GradingAnswer } from "./schema";

const STOPPED = "You stopped the calculation. Your numbers are unchanged.";
const LATE =
  "The calculation took too long and was stopped. Your numbers are unchanged. Lock some numbers or remove a sum under “Must add up” to make it faster.";
const UNANSWERED = "The calculation got no answer. Your numbers are unchanged. Start it again.";

/** Twice the time limit of a task. */
const UNANSWERED_AFTER_MS = 400_000;

const FAILED =
  "This could not be calculated because of an error in Sizewright. Your numbers are saved as they are. Enter the numbers you know and try again.";

/** A grading that the viewer requested. @throws {AppError} "not-found" */
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

/** Where clause of a grading that the proved person requested. @throws {AppError} "not-found" for what is no id. */
export function ownGrading(access: PatternAccess, gradingId: string): Prisma.GradingWhereUniqueInput {
  if (!z.uuid().safeParse(gradingId).success) throw new AppError("not-found");
  return { id: gradingId, accountId: access.accountId, pattern: patternEditScope(access) };
}
