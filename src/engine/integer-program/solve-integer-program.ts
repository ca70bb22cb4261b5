import { valueOfSum, type IntegerProgram, type Solver } from "./integer-program";
import { isFeasible } from "./is-feasible";
import { writeLp } from "./write-lp";

export type IntegerSolution =
  | { readonly status: "optimal"; readonly values: readonly number[]; readonly objective: number }
  | { readonly status: "infeasible" }
  /** The solver stopped at a limit with a feasible solution that may not be optimal. */
  | { readonly status: "stopped"; readonly values: readonly number[]; readonly objective: number }
  /** The solver stopped without a solution, or returned an infeasible one. */
  | { readonly status: "unproven"; readonly message: string };

/**
 * Solves an integer program with the given solver, and verifies the solution.
 *
 * @returns integer variables as exact whole numbers.
 */
export function solveIntegerProgram(program: IntegerProgram, solver: Solver): IntegerSolution {
  const answer = solver(writeLp(program));
  if (answer.status === "Infeasible") return { status: "infeasible" };
  const isProven = answer.status === "Optimal";
  if (!isProven && answer.values.size === 0) return { status: "unproven", message: answer.status };
  const values = program.whole.map((isWhole, index) => {
    const value = answer.values.get(`x${index}`) ?? Number.NaN;
    return isWhole ? Math.round(value) : value;
  });
  if (!isFeasible(program, values))
    return { status: "unproven", message: isProven ? "The answer breaks a constraint." : answer.status };
  return { status: isProven ? "optimal" : "stopped", values, objective: valueOfSum(program.objective, values) };
}

/**
 * Lower bound: the optimum of the relaxation without integrality.
 *
 * @returns negative infinity if the solver finds none.
 */
export function lowerBound(program: IntegerProgram, solver: Solver): number {
  const relaxed = solveIntegerProgram({ ...program, whole: program.whole.map(() => false) }, solver);
  return relaxed.status === "optimal" ? relaxed.objective : Number.NEGATIVE_INFINITY;
}
