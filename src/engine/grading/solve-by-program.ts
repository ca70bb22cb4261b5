import { lowerBound, solveIntegerProgram, type Constraint, type Solver } from "../integer-program";
import type { Grading } from "../pattern";
import { countVariables, gradingAt } from "./count-variables";
import { findClash, type Clash } from "./find-clash";
import { gradingRules } from "./grading-rules";
import {
  costOf,
  excessSum,
  gradingStages,
  STAGE_TOLERANCE,
  rowsWithin,
  type GroupRequest,
  type StageName,
} from "./grading-stages";

/** Where the solver stopped at its limit: the stage's value as found, and what it cannot be below. */
export interface Limit {
  readonly counts: readonly string[];
  readonly stage: StageName;
  readonly value: number;
  readonly bound: number;
}

export type SolvedCounts =
  | { readonly status: "optimal"; readonly grading: Grading }
  | { readonly status: "limit"; readonly grading: Grading; readonly limit: Limit }
  | { readonly status: "infeasible"; readonly clash: readonly Clash[] }
  | { readonly status: "unproven"; readonly says: string };

/**
 * New numbers for a group of counts, in all sizes at once, stage after stage with a solver of integer programs.
 *
 * A stage that costs nothing at the answer of the one before is at its least already.
 *
 * @see solveCounts
 */
export function solveByProgram(request: GroupRequest, solver: Solver): SolvedCounts {
  const { pattern, counts } = request;
  const variables = countVariables(pattern, counts);
  const rules = gradingRules(pattern, counts, variables);
  const gradingOf = (values: readonly number[]) => gradingAt(request, values);
  let whole = new Array<boolean>(variables.total).fill(true);
  let constraints: Constraint[] = rules.flatMap((rule) => rule.constraints);
  let best: readonly number[] | null = null;
  for (const stage of gradingStages(request)) {
    if (best === null || costOf(stage, best) > STAGE_TOLERANCE) {
      const excess = excessSum(stage, whole.length);
      const extended = [...whole, ...stage.rows.map(() => stage.isWhole)];
      const program = {
        whole: extended,
        constraints: [...constraints, ...excess.constraints],
        objective: excess.sum,
      };
      const solution = solveIntegerProgram(program, solver);
      if (solution.status === "infeasible" && best === null)
        return { status: "infeasible", clash: findClash(rules, { whole, solver }) };
      if (solution.status !== "optimal") {
        const found: readonly number[] | null = solution.status === "stopped" ? solution.values : best;
        if (found === null)
          return { status: "unproven", says: solution.status === "unproven" ? solution.message : stage.name };
        const bound = Math.max(0, lowerBound(program, solver));
        const limit = { counts: counts.map(({ id }) => id), stage: stage.name, value: costOf(stage, found), bound };
        return { status: "limit", grading: gradingOf(found), limit };
      }
      best = solution.values;
      // By the whole numbers: the solver's own sum may be a little too small, for it keeps each row to about a millionth.
      const cost = costOf(stage, best);
      if (cost > STAGE_TOLERANCE) {
        const least: Constraint = { sum: excess.sum, relation: "<=", right: cost + STAGE_TOLERANCE };
        constraints = [...program.constraints, least];
        whole = extended;
        continue;
      }
    }
    constraints = [...constraints, ...rowsWithin(stage, stage.tolerance + STAGE_TOLERANCE)];
  }
  return { status: "optimal", grading: gradingOf(best ?? []) };
}
