import type { Solver } from "../integer-program";
import type { Fault } from "../pattern";
import { gradePattern, type GradeOutcome } from "./grade-pattern";
import type { GradeRequest } from "./grade-request";
import { relaxations, type Relaxation } from "./relax-clash";

export interface ChoicesRequest extends Omit<GradeRequest, "slack"> {
  /** Deviations without cost, in tolerances. */
  readonly slacks: readonly number[];
}

/** A grading to choose from, with its slack. */
export type GradingChoice = Extract<GradeOutcome, { grading: unknown }> & { readonly slack: number };

export type GradeChoices =
  | { readonly status: "graded"; readonly choices: readonly GradingChoice[] }
  | { readonly status: "infeasible"; readonly clash: readonly Relaxation[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

/**
 * Grades the same pattern with several slacks, for a person to choose from.
 *
 * @param request slacks in the order of the returned choices.
 * @returns the choices; or one conflict, which no slack resolves, with a relaxation of each of its rules; or faults.
 * @see gradePattern
 */
export function gradeChoices({ slacks, ...request }: ChoicesRequest, solver: Solver): GradeChoices {
  const choices: GradingChoice[] = [];
  for (const slack of slacks) {
    const outcome = gradePattern({ ...request, slack }, solver);
    if (outcome.status === "faults") return outcome;
    if (outcome.status === "infeasible")
      return { status: "infeasible", clash: relaxations(request.pattern, outcome.clash, solver) };
    choices.push({ slack, ...outcome });
  }
  return { status: "graded", choices };
}
