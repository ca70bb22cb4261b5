import type { PatternDocument } from "@/engine/pattern";
import type { AskedGrading, GradingAnswer } from "../grading/schema";
import type { Failure } from "@/server/action";

/** Actions of another feature, passed by the page for solving. */
export interface GradingActions {
  readonly ask: (
    patternId: string,
    input: { readonly document: PatternDocument; readonly idempotencyKey: string },
  ) => Promise<AskedGrading | Failure>;
  readonly stop: (patternId: string, gradingId: string) => Promise<GradingAnswer | Failure>;
}
