import { solveIntegerProgram, type Solver } from "../integer-program";
import type { GradingRule } from "./grading-rules";

export type Clash = Omit<GradingRule, "constraints">;

type HasAnswer = (rules: readonly GradingRule[]) => boolean;

/**
 * A minimal conflict among rules that cannot all be met: each rule is dropped in turn, and stays out if there is still no solution.
 *
 * @param rules through sizes for the first count, as `gradingRules` lists them.
 * @returns conflicting rules, none of which can be left out.
 * @see docs/method.md#grading.
 */
export function findClash(
  rules: readonly GradingRule[],
  { whole, solver }: { whole: readonly boolean[]; solver: Solver },
): Clash[] {
  const hasAnswer: HasAnswer = (some) => {
    const constraints = some.flatMap((rule) => rule.constraints);
    return solveIntegerProgram({ whole, constraints, objective: [] }, solver).status !== "infeasible";
  };
  let conflicting = clashingSizes(rules, hasAnswer);
  for (const rule of conflicting) {
    const without = conflicting.filter((other) => other !== rule);
    if (!hasAnswer(without)) conflicting = without;
  }
  return conflicting.map(({ constraints: _, ...clash }) => clash);
}

/** The rules of the smallest range of sizes that conflict, usually one size: this leaves fewer rules to drop one by one. */
function clashingSizes(rules: readonly GradingRule[], hasAnswer: HasAnswer): readonly GradingRule[] {
  const sizes = [...new Set(rules.map(({ size }) => size))];
  const rulesOf = (from: number, to: number) => {
    const some = new Set(sizes.slice(from, to + 1));
    return rules.filter(({ size }) => some.has(size));
  };
  const last = sizes.findIndex((_, to) => !hasAnswer(rulesOf(0, to)));
  const first = sizes.findLastIndex((_, from) => from <= last && !hasAnswer(rulesOf(from, last)));
  return rulesOf(first, last);
}
