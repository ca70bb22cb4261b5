import { solveIntegerProgram, type Constraint, type Solver } from "../integer-program";
import { workRules } from "../garment";
import type { PatternDocument } from "../pattern";
import { countGroups } from "./count-groups";
import { countVariables } from "./count-variables";
import type { Clash } from "./find-clash";
import { gradingRules, type GradingRule } from "./grading-rules";

/** One rule of a conflict, with its smallest relaxation that resolves the conflict. */
export interface Relaxation {
  readonly clash: Clash;
  /** False if the other rules conflict as well, so that relaxing this one is not enough. */
  readonly helps: boolean;
  readonly says: string;
}

/**
 * For each rule of a conflict the smallest violation with which all other rules can be met.
 *
 * @param clash of `gradePattern` or `solveCounts` over this pattern.
 * @see docs/method.md#grading; an elastic program of one rule at a time (Chinneck 2008, from memory).
 */
export function relaxations(pattern: PatternDocument, clash: readonly Clash[], solver: Solver): Relaxation[] {
  const named = new Set(clash.flatMap(({ count }) => (count === undefined ? [] : [count])));
  const group = countGroups(pattern, workRules(pattern)).find(({ counts }) => counts.some((id) => named.has(id)));
  if (group === undefined) return [];
  const counts = pattern.counts.filter(({ id }) => group.counts.includes(id));
  const variables = countVariables(pattern, counts);
  const rules = gradingRules(pattern, counts, variables);
  const whole = new Array<boolean>(variables.total).fill(true);
  return clash.map((one) => {
    const rule = rules.find((other) => other.rule === one.rule && other.says === one.says);
    const step = rule && smallestRelaxation(rules, { rule, whole, solver });
    if (!step)
      return { clash: one, helps: false, says: "Other rules conflict as well: relaxing this one is not enough." };
    const index = pattern.sizes.findIndex(({ id }) => id === one.size);
    const number = one.count === undefined ? undefined : step.values[variables.numberOf(one.count, index)];
    return { clash: one, helps: true, says: relaxationMessage(pattern, one, { off: step.off, number: number ?? 0 }) };
  });
}

function smallestRelaxation(
  rules: readonly GradingRule[],
  { rule, whole, solver }: { rule: GradingRule; whole: readonly boolean[]; solver: Solver },
): { off: number; values: readonly number[] } | undefined {
  const off = whole.length;
  const kept = rules.filter((other) => other !== rule).flatMap(({ constraints }) => constraints);
  const solution = solveIntegerProgram(
    {
      whole: [...whole, true],
      constraints: [...kept, ...rule.constraints.flatMap((constraint) => elastic(constraint, off))],
      objective: [{ variable: off, weight: 1 }],
    },
    solver,
  );
  return solution.status === "optimal" ? { off: solution.objective, values: solution.values } : undefined;
}

/** A constraint that may be violated by the value of a variable. */
function elastic({ sum, relation, right }: Constraint, off: number): Constraint[] {
  const upper: Constraint = { sum: [...sum, { variable: off, weight: -1 }], relation: "<=", right };
  const lower: Constraint = { sum: [...sum, { variable: off, weight: 1 }], relation: ">=", right };
  if (relation === "=") return [upper, lower];
  return [relation === "<=" ? upper : lower];
}

function relaxationMessage(
  pattern: PatternDocument,
  { rule, count, size }: Clash,
  { off, number }: { off: number; number: number },
): string {
  const name = `“${pattern.counts.find(({ id }) => id === count)?.label ?? count}”`;
  const index = pattern.sizes.findIndex(({ id }) => id === size);
  const label = pattern.sizes[index]?.label ?? size;
  switch (rule) {
    case "locked":
      return `Unlock ${name} in ${label}: ${number} would do.`;
    case "repeat":
      return `Let ${name} be ${number} in ${label}, off its repeat.`;
    case "least":
      return `Let ${name} go down to ${number} in ${label}.`;
    case "order":
      return `Let ${name} shrink from ${pattern.sizes[index - 1]?.label} to ${label}, where ${number} would do.`;
    case "work":
      return `Change how this is worked: as it is, it is off by ${off} in ${label}.`;
    case "tie":
      return `Let the sum of ${name} be off by ${off} in ${label}.`;
  }
}
