/** A sum of weighted variables, by their index. */
export type Sum = readonly { readonly variable: number; readonly weight: number }[];

export interface Constraint {
  readonly sum: Sum;
  readonly relation: "<=" | ">=" | "=";
  readonly right: number;
}

/** Minimise a sum over non-negative variables subject to constraints. */
export interface IntegerProgram {
  /** One entry per variable: whether it must be an integer. */
  readonly whole: readonly boolean[];
  readonly constraints: readonly Constraint[];
  readonly objective: Sum;
}

/** A solver's result for an LP text: its status, and the values by column name. */
export interface SolverAnswer {
  readonly status: string;
  readonly values: ReadonlyMap<string, number>;
}

/** A solver of LP texts, passed in; exact to a relative and absolute gap of 0. */
export type Solver = (lpText: string) => SolverAnswer;

export function valueOfSum(sum: Sum, values: readonly number[]): number {
  return sum.reduce((total, { variable, weight }) => total + weight * (values[variable] ?? Number.NaN), 0);
}

/** The same sum with one term per variable and without zero weights. */
export function mergeSum(sum: Sum): Sum {
  const weights = new Map<number, number>();
  for (const { variable, weight } of sum) weights.set(variable, (weights.get(variable) ?? 0) + weight);
  return [...weights].flatMap(([variable, weight]) => (weight === 0 ? [] : [{ variable, weight }]));
}
