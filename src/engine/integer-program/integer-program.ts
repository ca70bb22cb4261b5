/** A sum of weighted variables, by their index. */
export type Sum = readonly { readonly variable: number; readonly weight: number }[];

export interface Constraint {
  readonly sum: Sum;
  readonly relation: "<=" | ">=" | "=";
  readonly right: number;
}

/** The least value of a sum over variables of 0 or more that keep every constraint. */
export interface IntegerProgram {
  /** One entry a variable: whether it must be whole. */
  readonly whole: readonly boolean[];
  readonly constraints: readonly Constraint[];
  readonly objective: Sum;
}

/** What a solver says of an LP text: its word for the outcome, and the values by column name. */
export interface SolverAnswer {
  readonly status: string;
  readonly values: ReadonlyMap<string, number>;
}

/** A solver of LP texts, handed in; exact to a relative and absolute gap of 0. */
export type Solver = (lpText: string) => SolverAnswer;

export function valueOfSum(sum: Sum, values: readonly number[]): number {
  return sum.reduce((total, { variable, weight }) => total + weight * (values[variable] ?? Number.NaN), 0);
}
