import { gradingAnswerSchema, type GradingAnswer } from "../grading/schema";
import type { Failure } from "@/server/action";
import { AppError, type AppErrorCode } from "@/server/errors";

/**
 * Fetches the state of a grading with a GET, because actions run one after another and one of them saves what is typed meanwhile.
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
  // Redirected to the sign-in page.
  if (type === "opaqueredirect") return "signed-out";
  if (status === 404) return "not-found";
  return status === 503 ? "database-away" : null;
}
