import { valueOfSum, type Constraint, type Sum } from "../integer-program";
import { own, type Count, type Grading, type Measurement, type PatternDocument } from "../pattern";
import { countVariables } from "./count-variables";
import { deviationRows } from "./deviation-rows";

/** The stages of docs/method.md#grading in their order; `near` only where a tested grading is given. */
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

/** Counts that are solved together, with what their numbers should come to. */
export interface GroupRequest {
  readonly pattern: PatternDocument;
  readonly counts: readonly Count[];
  readonly measurements: readonly Measurement[];
  /** The tested grading; counts and sizes that it leaves out may come out as they like. */
  readonly near?: Grading;
  /** Deviation that costs nothing, in tolerances. */
  readonly slack: number;
}

/** An optimum of one stage may be missed by this much in the next ones, for sums of doubles do not come out the same twice. */
export const STAGE_TOLERANCE = 1e-7;

/** What is made small one after another for a group of counts. @see docs/method.md#grading. */
export function gradingStages({ pattern, counts, measurements, near, slack }: GroupRequest): Stage[] {
  const variables = countVariables(pattern, counts);
  const deviations = deviationRows(pattern, measurements, variables);
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
    return cost + Math.max(0, Math.abs(valueOfSum(sum, values) - right) - free);
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
