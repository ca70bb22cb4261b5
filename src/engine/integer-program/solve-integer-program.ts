import type { IntegerProgram, Solver, Sum } from "./integer-program";
import { writeLp } from "./write-lp";

export type IntegerSolution =
  | { readonly status: "optimal"; readonly values: readonly number[]; readonly objective: number }
  | { readonly status: "infeasible" }
  /** The solver stopped at a limit with an answer that keeps every constraint, and may not be the best. */
  | { readonly status: "stopped"; readonly values: readonly number[]; readonly objective: number }
  /** The solver stopped without an answer, or gave one that breaks a constraint. */
  | { readonly status: "unproven"; readonly says: string };

/**
 * By how much an answer may miss a constraint of some variables that need not be whole: solvers keep each to about a
 * millionth, and whole variables are then rounded. One of whole variables and weights alone is kept exactly.
 */
const TOLERANCE_A_TERM = 1e-5;

/**
 * Solves an integer program with a solver that is handed in, and checks the answer before it is believed.
 *
 * @returns whole variables as exact whole numbers.
 */
export function solveIntegerProgram(program: IntegerProgram, solver: Solver): IntegerSolution {
  const answer = solver(writeLp(program));
  if (answer.status === "Infeasible") return { status: "infeasible" };
  const isProven = answer.status === "Optimal";
  if (!isProven && answer.values.size === 0) return { status: "unproven", says: answer.status };
  const values = program.whole.map((isWhole, index) => {
    const value = answer.values.get(`x${index}`) ?? Number.NaN;
    return isWhole ? Math.round(value) : value;
  });
  const isKept = program.constraints.every(({ sum, relation, right }) => {
    const left = valueOf(sum, values);
    const isExact = sum.every(({ variable, weight }) => program.whole[variable] && Number.isInteger(weight));
    const slack = isExact ? 0 : TOLERANCE_A_TERM * Math.max(1, sum.length);
    if (relation === "<=") return left <= right + slack;
    return relation === ">=" ? left >= right - slack : Math.abs(left - right) <= slack;
  });
  if (!isKept) return { status: "unproven", says: isProven ? "The answer breaks a constraint." : answer.status };
  return { status: isProven ? "optimal" : "stopped", values, objective: valueOf(program.objective, values) };
}

/**
 * What no answer can be below: the least value where no variable need be whole.
 *
 * @returns negative infinity where the solver does not say.
 */
export function lowerBound(program: IntegerProgram, solver: Solver): number {
  const relaxed = solveIntegerProgram({ ...program, whole: program.whole.map(() => false) }, solver);
  return relaxed.status === "optimal" ? relaxed.objective : Number.NEGATIVE_INFINITY;
}

function valueOf(sum: Sum, values: readonly number[]): number {
  return sum.reduce((total, { variable, weight }) => total + weight * (values[variable] ?? Number.NaN), 0);
}
