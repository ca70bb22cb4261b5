import { lowerBound, solveIntegerProgram, type Constraint, type Solver } from "../integer-program";
import type { Grading, PatternDocument } from "../pattern";
import type { CountGroup } from "./count-groups";
import { countVariables } from "./count-variables";
import { findClash, type Clash } from "./find-clash";
import { gradingRules } from "./grading-rules";
import { costOf, excessSum, gradingStages, withinRows, type StageName } from "./grading-stages";

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

/** An optimum of one stage may be missed by this much in the next ones, for sums of doubles do not come out the same twice. */
const STAGE_TOLERANCE = 1e-7;

/**
 * New numbers for a group of counts, in all sizes at once: first nothing beyond tolerance, then least deviation, then near
 * the tested numbers, then even steps, then few stitches.
 *
 * A stage that costs nothing at the answer of the one before is at its least already.
 *
 * @param near the tested grading; counts and sizes that it leaves out may come out as they like.
 * @param slack deviation that costs nothing, in tolerances.
 * @see design 4.2.
 */
export function solveCounts(given: {
  readonly pattern: PatternDocument;
  readonly group: CountGroup;
  readonly near?: Grading;
  readonly slack: number;
  readonly solver: Solver;
}): SolvedCounts {
  const { pattern, group, solver } = given;
  const counts = pattern.counts.filter(({ id }) => group.counts.includes(id));
  const variables = countVariables(pattern, counts);
  const rules = gradingRules(pattern, counts, variables);
  const gradingOf = (values: readonly number[]) =>
    gradingAt(pattern, group, (id, at) => values[variables.numberOf(id, at)]);
  let whole = new Array<boolean>(variables.total).fill(true);
  let constraints: Constraint[] = rules.flatMap((rule) => rule.constraints);
  let best: readonly number[] | null = null;
  for (const stage of gradingStages(pattern, { ...given, counts, variables })) {
    if (best === null || costOf(stage, best) > STAGE_TOLERANCE) {
      const excess = excessSum(stage, whole.length);
      const wider = [...whole, ...stage.rows.map(() => stage.isWhole)];
      const program = {
        whole: wider,
        constraints: [...constraints, ...excess.constraints],
        objective: excess.sum,
      };
      const solution = solveIntegerProgram(program, solver);
      if (solution.status === "infeasible" && best === null)
        return { status: "infeasible", clash: findClash(rules, { whole, solver }) };
      if (solution.status !== "optimal") {
        const found: readonly number[] | null = solution.status === "stopped" ? solution.values : best;
        if (found === null)
          return { status: "unproven", says: solution.status === "unproven" ? solution.says : stage.name };
        const bound = Math.max(0, lowerBound(program, solver));
        const limit = { counts: group.counts, stage: stage.name, value: costOf(stage, found), bound };
        return { status: "limit", grading: gradingOf(found), limit };
      }
      best = solution.values;
      // By the whole numbers: the solver's own sum may be a little too small, for it keeps each row to about a millionth.
      const cost = costOf(stage, best);
      if (cost > STAGE_TOLERANCE) {
        const least: Constraint = { sum: excess.sum, relation: "<=", right: cost + STAGE_TOLERANCE };
        constraints = [...program.constraints, least];
        whole = wider;
        continue;
      }
    }
    constraints = [...constraints, ...withinRows(stage, stage.free + STAGE_TOLERANCE)];
  }
  return { status: "optimal", grading: gradingOf(best ?? []) };
}

function gradingAt(
  { sizes }: PatternDocument,
  { counts }: CountGroup,
  numberOf: (count: string, size: number) => number | undefined,
): Grading {
  const bySize = (id: string) => sizes.map((size, at) => [size.id, numberOf(id, at) ?? Number.NaN] as const);
  return Object.fromEntries(counts.map((id) => [id, Object.fromEntries(bySize(id))]));
}
