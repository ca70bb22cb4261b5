import { solveIntegerProgram, type Constraint, type Solver, type Sum } from "../integer-program";
import { own, type Count, type Grading, type PatternDocument } from "../pattern";
import type { CountGroup } from "./count-groups";
import { findClash, type Clash } from "./find-clash";
import { gradingRules, type CountVariables } from "./grading-rules";
import { deviationRows } from "./deviation-rows";

export type SolvedCounts =
  | { readonly status: "optimal"; readonly grading: Grading }
  | { readonly status: "infeasible"; readonly clash: readonly Clash[] }
  | { readonly status: "unproven"; readonly says: string };

/** An optimum of one stage may be missed by this much in the next ones, for sums of doubles do not come out the same twice. */
const STAGE_TOLERANCE = 1e-7;

/**
 * New numbers for a group of counts, in all sizes at once: first nothing beyond tolerance, then least deviation, then near
 * the tested numbers, then even steps, then few stitches.
 *
 * @param near the tested grading.
 * @param slack deviation that costs nothing, in tolerances.
 * @see design 4.2.
 */
export function solveCounts(given: {
  readonly pattern: PatternDocument;
  readonly group: CountGroup;
  readonly near: Grading;
  readonly slack: number;
  readonly solver: Solver;
}): SolvedCounts {
  const { pattern, group, solver } = given;
  const counts = pattern.counts.filter(({ id }) => group.counts.includes(id));
  const variables = countVariables(pattern, counts);
  const rules = gradingRules(pattern, counts, variables);
  const stages = stagesOf({ ...given, counts, variables });
  const whole = stages.whole;
  let constraints: Constraint[] = [...rules.flatMap((rule) => rule.constraints), ...stages.constraints];
  let values: readonly number[] = [];
  for (const objective of stages.objectives) {
    const solution = solveIntegerProgram({ whole, constraints, objective }, solver);
    if (solution.status === "infeasible") return { status: "infeasible", clash: findClash(rules, { whole, solver }) };
    if (solution.status === "unproven") return solution;
    values = solution.values;
    constraints = [...constraints, { sum: objective, relation: "<=", right: solution.objective + STAGE_TOLERANCE }];
  }
  const grading = counts.map(({ id }) => [
    id,
    Object.fromEntries(pattern.sizes.map((size, at) => [size.id, values[variables.numberOf(id, at)] ?? 0])),
  ]);
  return { status: "optimal", grading: Object.fromEntries(grading) };
}

function countVariables(pattern: PatternDocument, counts: readonly Count[]): CountVariables {
  const order = new Map(counts.map(({ id }, at) => [id, at]));
  const sizes = pattern.sizes.length;
  const numberOf = (count: string, size: number) => (order.get(count) ?? 0) * sizes + size;
  return { numberOf, repeatsOf: (count, size) => counts.length * sizes + numberOf(count, size) };
}

interface Stages {
  readonly whole: readonly boolean[];
  readonly constraints: readonly Constraint[];
  readonly objectives: readonly Sum[];
}

function stagesOf(given: {
  readonly pattern: PatternDocument;
  readonly group: CountGroup;
  readonly near: Grading;
  readonly slack: number;
  readonly counts: readonly Count[];
  readonly variables: CountVariables;
}): Stages {
  const { pattern, group, near, slack, counts, variables } = given;
  const whole = new Array<boolean>(2 * counts.length * pattern.sizes.length).fill(true);
  const constraints: Constraint[] = [];
  const excess = (rows: readonly Row[], free: number): Sum =>
    rows.map(({ sum, right }) => {
      const variable = whole.push(false) - 1;
      constraints.push({ sum: [...sum, { variable, weight: -1 }], relation: "<=", right: right + free });
      constraints.push({ sum: [...sum, { variable, weight: 1 }], relation: ">=", right: right - free });
      return { variable, weight: 1 };
    });
  const deviations = deviationRows(pattern, group, variables);
  const numbers = counts.flatMap(({ id }) => pattern.sizes.map((size, at) => ({ id, at, size: size.id })));
  const nearRows = numbers.map(({ id, at, size }) => ({
    sum: [{ variable: variables.numberOf(id, at), weight: 1 }],
    right: own(own(near, id), size) ?? 0,
  }));
  const stepRows = numbers
    .filter(({ at }) => at > 0 && at < pattern.sizes.length - 1)
    .map(({ id, at }) => ({
      sum: [-1, 0, 1].map((offset) => ({
        variable: variables.numberOf(id, at + offset),
        weight: offset === 0 ? -2 : 1,
      })),
      right: 0,
    }));
  return {
    constraints,
    objectives: [
      excess(deviations, 1),
      excess(deviations, slack),
      excess(nearRows, 0),
      excess(stepRows, 0),
      numbers.map(({ id, at }) => ({ variable: variables.numberOf(id, at), weight: 1 })),
    ],
    whole,
  };
}

/** What is to lie near `right`. */
interface Row {
  readonly sum: Sum;
  readonly right: number;
}
