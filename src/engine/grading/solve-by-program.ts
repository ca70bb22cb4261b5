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
  type Stage,
  type StageName,
} from "./grading-stages";

/** The stage in which the solver stopped at its limit, with the value found and its lower bound. */
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
  | { readonly status: "unproven"; readonly message: string };

/** As `SolvedCounts`, without asking why there is no grading. */
export type SolvedStages = Exclude<SolvedCounts, { readonly status: "infeasible" }> | { readonly status: "infeasible" };

/**
 * Solves a group of counts in all sizes at once, stage after stage, with an integer programming solver.
 *
 * @see solveCounts
 */
export function solveByProgram(request: GroupRequest, solver: Solver): SolvedCounts {
  const solved = solveStages(request, solver);
  if (solved.status !== "infeasible") return solved;
  const { pattern, counts } = request;
  const variables = countVariables(pattern, counts);
  const whole = new Array<boolean>(variables.total).fill(true);
  return { status: "infeasible", clash: findClash(gradingRules(pattern, counts, variables), { whole, solver }) };
}

/**
 * The stages one after another. One whose cost is 0 at the previous solution is already optimal.
 *
 * @param maxUnevenness which no grading may exceed; left out where it may be any.
 */
export function solveStages(request: GroupRequest, solver: Solver, maxUnevenness?: number): SolvedStages {
  const { pattern, counts } = request;
  const variables = countVariables(pattern, counts);
  const rules = gradingRules(pattern, counts, variables);
  const gradingOf = (values: readonly number[]) => gradingAt(request, values);
  const stages = gradingStages(request);
  let { whole, constraints } = capped(stages, maxUnevenness, {
    whole: new Array<boolean>(variables.total).fill(true),
    constraints: rules.flatMap((rule) => rule.constraints),
  });
  let best: readonly number[] | null = null;
  for (const stage of stages) {
    if (best === null || costOf(stage, best) > STAGE_TOLERANCE) {
      const excess = excessSum(stage, whole.length);
      const extended = [...whole, ...stage.rows.map(() => stage.isWhole)];
      const program = {
        whole: extended,
        constraints: [...constraints, ...excess.constraints],
        objective: excess.sum,
      };
      const solution = solveIntegerProgram(program, solver);
      if (solution.status === "infeasible" && best === null) return { status: "infeasible" };
      if (solution.status !== "optimal") {
        const found: readonly number[] | null = solution.status === "stopped" ? solution.values : best;
        if (found === null)
          return { status: "unproven", message: solution.status === "unproven" ? solution.message : stage.name };
        const bound = Math.max(0, lowerBound(program, solver));
        const limit = { counts: counts.map(({ id }) => id), stage: stage.name, value: costOf(stage, found), bound };
        return { status: "limit", grading: gradingOf(found), limit };
      }
      best = solution.values;
      // From the rounded values: the solver's own objective may be slightly too small, because it meets rows only to about 1e-6.
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

interface Program {
  readonly whole: boolean[];
  readonly constraints: Constraint[];
}

/** The program with a limit to unevenness, where one is asked for. */
function capped(stages: readonly Stage[], maxUnevenness: number | undefined, { whole, constraints }: Program): Program {
  const stage = stages.find(({ name }) => name === "unevenness");
  if (maxUnevenness === undefined || stage === undefined) return { whole, constraints };
  const excess = excessSum(stage, whole.length);
  return {
    whole: [...whole, ...stage.rows.map(() => stage.isWhole)],
    constraints: [...constraints, ...excess.constraints, { sum: excess.sum, relation: "<=", right: maxUnevenness }],
  };
}
