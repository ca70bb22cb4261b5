import { gradingAnswerSchema, type GradingAnswer } from "@/features/gradings/schema";
import type { Failure } from "@/server/action";
import { AppError, type AppErrorCode } from "@/server/errors";

/**
 * How a grading stands. Asked for by a GET: actions wait for each other, and what is typed meanwhile is saved by one.
 *
 * @throws {Error} where there is no answer, or none that can be read.
 */
export async function readGrading(patternId: string, gradingId: string): Promise<GradingAnswer | Failure> {
  const address = `/patterns/${patternId}/gradings/${gradingId}`;
  const answer = await fetch(address, { cache: "no-store", redirect: "manual" });
  const failed = failureOf(answer);
  if (failed !== null) return { status: "failed", says: new AppError(failed).message };
  return gradingAnswerSchema.parse(await answer.json());
}

function failureOf({ type, status }: Response): AppErrorCode | null {
  // Led on to the page to sign in.
  if (type === "opaqueredirect") return "signed-out";
  if (status === 404) return "not-found";
  return status === 503 ? "database-away" : null;
}
