import { surfacePosterior } from "../variance-components";
import type { PatternDocument } from "../pattern";
import type { CauseSearch, FoundCause } from "./causes/search-causes";
import type { Carrier, Cause } from "./gaps-output";
import { causeColumn } from "./model/gap-surface";

/**
 * The causes with enough evidence, in the units of their inputs.
 *
 * @param gaps estimated gap of each reported cell, tolerances, `undefined` where a cell has no report.
 * @param carriers on whom each cause rests.
 * @returns causes, best first, those that a single tester carries after those that several do.
 * @see docs/method.md#causes.
 */
export function causeFindings(
  pattern: PatternDocument,
  { fit, found }: CauseSearch,
  gaps: readonly (number | undefined)[],
  carriers: readonly (readonly Carrier[])[],
): Cause[] {
  const variances = surfacePosterior(fit.solution).sharedVariances;
  const causes = found.map((cause, which): Cause => {
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
      restsOn: carriers[which] ?? [],
      rivals: cause.rivals.map(({ candidate, evidence, tied }) => ({ ...candidate.input, evidence, tied })),
    };
  });
  return causes.toSorted((left, right) => restsOnOne(left) - restsOnOne(right));
}

function restsOnOne({ restsOn }: Cause): number {
  return restsOn.length > 0 ? 1 : 0;
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
