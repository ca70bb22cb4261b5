import type { Solver } from "../integer-program";
import type { Fault } from "../pattern";
import { gradePattern, type GradeOutcome } from "./grade-pattern";
import type { GradeRequest } from "./grade-request";
import { relaxations, type Relaxation } from "./relax-clash";

export interface ChoicesRequest extends Omit<GradeRequest, "slack"> {
  /** Deviations that cost nothing, in tolerances. */
  readonly slacks: readonly number[];
}

/** A grading that a person may choose, and the slack that it was found with. */
export type GradingChoice = Extract<GradeOutcome, { grading: unknown }> & { readonly slack: number };

export type GradeChoices =
  | { readonly status: "graded"; readonly choices: readonly GradingChoice[] }
  | { readonly status: "infeasible"; readonly clash: readonly Relaxation[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

/**
 * The same pattern graded with one slack after another, for a person to choose from.
 *
 * @param request slacks in the order in which the choices come back.
 * @returns the choices; or one clash, which no slack undoes, with what would loosen each of its rules; or faults.
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
