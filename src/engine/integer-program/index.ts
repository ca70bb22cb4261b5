export { integerPoints } from "./integer-points";
export type { Constraint, IntegerProgram, Solver, SolverAnswer, Sum } from "./integer-program";
export { valueOfSum } from "./integer-program";
export { lowerBound, solveIntegerProgram } from "./solve-integer-program";
export { writeLp } from "./write-lp";
