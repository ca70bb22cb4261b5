import type { Constraint, Sum } from "../integer-program";
import { own, type Count, type Grading, type PatternDocument } from "../pattern";
import type { CountGroup } from "./count-groups";
import type { CountVariables } from "./count-variables";
import { deviationRows } from "./deviation-rows";

/** The stages of 4.2 in their order; `near` only where a tested grading is given. */
export type StageName = "beyond" | "deviation" | "near" | "unevenness" | "sum";

/** What is to lie near `right`. */
export interface Row {
  readonly sum: Sum;
  readonly right: number;
}

/** Rows whose distance from where they should lie costs what exceeds `free`. */
export interface Stage {
  readonly name: StageName;
  readonly rows: readonly Row[];
  readonly free: number;
  /** True where the rows are sums of stitches, so that what exceeds is whole: a search then ends sooner. */
  readonly isWhole: boolean;
}

/**
 * What is made small one after another for a group of counts.
 *
 * @param near the tested grading; what it leaves out is not drawn to anything.
 * @param slack deviation that costs nothing, in tolerances.
 * @see design 4.2.
 */
export function gradingStages(
  pattern: PatternDocument,
  given: {
    readonly group: CountGroup;
    readonly counts: readonly Count[];
    readonly variables: CountVariables;
    readonly near?: Grading;
    readonly slack: number;
  },
): Stage[] {
  const { group, counts, variables, near, slack } = given;
  const deviations = deviationRows(pattern, group, variables);
  const numbers = counts.flatMap(({ id }) => pattern.sizes.map((size, at) => ({ id, at, size: size.id })));
  const tested = numbers.flatMap(({ id, at, size }) => {
    const right = own(own(near, id), size);
    return right === undefined ? [] : [{ sum: [{ variable: variables.numberOf(id, at), weight: 1 }], right }];
  });
  const steps = numbers
    .filter(({ at }) => at > 0 && at < pattern.sizes.length - 1)
    .map(({ id, at }) => ({
      sum: [-1, 0, 1].map((offset) => ({
        variable: variables.numberOf(id, at + offset),
        weight: offset === 0 ? -2 : 1,
      })),
      right: 0,
    }));
  const whole = numbers.map(({ id, at }) => ({ variable: variables.numberOf(id, at), weight: 1 }));
  return [
    { name: "beyond", rows: deviations, free: 1, isWhole: false },
    { name: "deviation", rows: deviations, free: slack, isWhole: false },
    { name: "near", rows: tested, free: 0, isWhole: true },
    { name: "unevenness", rows: steps, free: 0, isWhole: true },
    { name: "sum", rows: [{ sum: whole, right: 0 }], free: 0, isWhole: true },
  ];
}

/** What a stage costs at given values of the variables. */
export function costOf({ rows, free }: Stage, values: readonly number[]): number {
  return rows.reduce((cost, { sum, right }) => {
    const made = sum.reduce((total, { variable, weight }) => total + weight * (values[variable] ?? Number.NaN), 0);
    return cost + Math.max(0, Math.abs(made - right) - free);
  }, 0);
}

/** Every row within so much of where it should lie. */
export function withinRows({ rows }: Stage, free: number): Constraint[] {
  return rows.flatMap(({ sum, right }): Constraint[] => [
    { sum, relation: "<=", right: right + free },
    { sum, relation: ">=", right: right - free },
  ]);
}

/** A stage as a sum of variables of its own, one a row, each at least what its row exceeds; the first is `first`. */
export function excessSum({ rows, free }: Stage, first: number): { sum: Sum; constraints: Constraint[] } {
  const constraints = rows.flatMap(({ sum, right }, at): Constraint[] => [
    { sum: [...sum, { variable: first + at, weight: -1 }], relation: "<=", right: right + free },
    { sum: [...sum, { variable: first + at, weight: 1 }], relation: ">=", right: right - free },
  ]);
  return { sum: rows.map((_, at) => ({ variable: first + at, weight: 1 })), constraints };
}
