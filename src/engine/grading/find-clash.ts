import { solveIntegerProgram, type Solver } from "../integer-program";
import type { GradingRule } from "./grading-rules";

export type Clash = Omit<GradingRule, "constraints">;

type HasAnswer = (rules: readonly GradingRule[]) => boolean;

/**
 * One clash among rules that cannot all be kept: each rule is dropped, and stays dropped while there is still no answer.
 *
 * @param rules through sizes for the first count, as `gradingRules` lists them.
 * @returns rules none of which can be spared.
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
  let kept = clashingSizes(rules, hasAnswer);
  for (const rule of kept) {
    const without = kept.filter((other) => other !== rule);
    if (!hasAnswer(without)) kept = without;
  }
  return kept.map(({ constraints: _, ...clash }) => clash);
}

/** The rules of as few neighbouring sizes as clash among themselves, mostly one: fewer rules to try one by one. */
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
