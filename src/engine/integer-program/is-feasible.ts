import { valueOfSum, type IntegerProgram } from "./integer-program";

/**
 * By how much an answer may miss a constraint of some variables that need not be whole: solvers keep each to about a
 * millionth, and whole variables are then rounded. One of whole variables and weights alone is kept exactly.
 */
const TOLERANCE_PER_TERM = 1e-5;

/** True where values of the variables keep every constraint. */
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
