export type { Constraint, IntegerProgram, Solver, SolverAnswer, Sum } from "./integer-program";
export { lowerBound, solveIntegerProgram, type IntegerSolution } from "./solve-integer-program";
export { writeLp } from "./write-lp";
