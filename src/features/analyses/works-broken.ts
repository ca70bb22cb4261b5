import type { CauseInput } from "@/engine/gaps";
import { gradingWarnings, type PatternDocument } from "@/engine/pattern";
import { adjustInput } from "@/engine/revision";

/** The first rule that a grading would break if it took the number really worked; null where it breaks none. */
export function worksBroken(
  cause: CauseInput & { readonly estimate: number },
  pattern: PatternDocument,
): string | null {
  const before = new Set(gradingWarnings(pattern).map(({ path, says }) => `${path} ${says}`));
  const taken = adjustInput(pattern, cause, Math.round(cause.estimate), "");
  const [broken] = gradingWarnings(taken).filter(({ path, says }) => !before.has(`${path} ${says}`));
  return broken?.says ?? null;
}
