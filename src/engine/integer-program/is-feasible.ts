import { valueOfSum, type IntegerProgram } from "./integer-program";

/**
 * Tolerance per term of a constraint with continuous variables: solvers meet each to about
 * 1e-6, and integer variables are then rounded. A constraint with integer variables and weights only must hold exactly.
 */
const TOLERANCE_PER_TERM = 1e-5;

/** True if the values satisfy every constraint. */
export function isFeasible(
  { whole, constraints }: Pick<IntegerProgram, "whole" | "constraints">,
  values: readonly number[],
): boolean {
  return constraints.every(({ sum, relation, right }) => {
    const left = valueOfSum(sum, values);
    const isExact = sum.every(({ variable, weight }) => whole[variable] && Number.isInteger(weight));
    const slack = isExact ? 0 : TOLERANCE_PER_TERM * Math.max(1, sum.length);
    if (relation === "<=") return left <= right + slack;
    return relation === ">=" ? left >= right - slack : Math.abs(left - right) <= slack;
  });
}
