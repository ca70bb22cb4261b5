import { surfacePosterior } from "../variance-components";
import type { PatternDocument } from "../pattern";
import type { CauseSearch, FoundCause } from "./causes/search-causes";
import type { Cause } from "./gaps-output";
import { causeColumn } from "./model/gap-surface";

/**
 * The causes with enough evidence, in the units of their inputs.
 *
 * @param gaps estimated gap of each reported cell, tolerances, `undefined` where a cell has no report.
 * @returns causes, best first.
 * @see docs/method.md#causes.
 */
export function causeFindings(
  pattern: PatternDocument,
  { fit, found }: CauseSearch,
  gaps: readonly (number | undefined)[],
): Cause[] {
  const variances = surfacePosterior(fit.solution).sharedVariances;
  return found.map((cause, which) => {
    const column = causeColumn(pattern, which);
    const exact = fit.solution.shared[column] ?? Number.NaN;
    const estimate = cause.candidate.input.kind === "count" ? wholeNotZero(exact) : exact;
    return {
      ...cause.candidate.input,
      estimate,
      standardError: Math.sqrt(variances[column] ?? Number.NaN),
      unit: cause.candidate.unit,
      explains: explained(cause, exact, gaps),
      evidence: cause.evidence,
      rivals: cause.rivals.map(({ candidate, evidence, tied }) => ({ ...candidate.input, evidence, tied })),
    };
  });
}

/** Instructions differ from the grading by a whole number of stitches or rows. */
function wholeNotZero(estimate: number): number {
  return Math.sign(estimate) * Math.max(1, Math.round(Math.abs(estimate)));
}

function explained({ candidate }: FoundCause, estimate: number, gaps: readonly (number | undefined)[]): number {
  let all = 0;
  let left = 0;
  gaps.forEach((gap, cell) => {
    if (gap === undefined) return;
    all += gap ** 2;
    left += (gap - estimate * (candidate.sensitivities[cell] ?? 0)) ** 2;
  });
  return all === 0 ? 0 : Math.max(0, 1 - left / all);
}
