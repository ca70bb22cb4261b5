import { solveIntegerProgram, type Solver } from "../integer-program";
import type { GradingRule } from "./grading-rules";

export type Clash = Omit<GradingRule, "constraints">;

/**
 * One clash among rules that cannot all be kept: each rule is dropped, and stays dropped while there is still no answer.
 *
 * @returns rules none of which can be spared.
 * @see design 4.2.
 */
export function findClash(
  rules: readonly GradingRule[],
  { whole, solver }: { whole: readonly boolean[]; solver: Solver },
): Clash[] {
  const hasAnswer = (some: readonly GradingRule[]) => {
    const constraints = some.flatMap((rule) => rule.constraints);
    return solveIntegerProgram({ whole, constraints, objective: [] }, solver).status !== "infeasible";
  };
  let kept = [...rules];
  for (const rule of rules) {
    const without = kept.filter((other) => other !== rule);
    if (!hasAnswer(without)) kept = without;
  }
  return kept.map(({ constraints: _, ...clash }) => clash);
}
