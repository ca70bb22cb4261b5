import { valueOfSum, type Constraint, type Sum } from "../integer-program";
import { ownValue, type Count, type Grading, type Measurement, type PatternDocument } from "../pattern";
import { solvedCounts } from "./count-groups";
import { countVariables } from "./count-variables";
import { deviationRows } from "./deviation-rows";

/** The stages in their order; `near` only if a tested grading is given. */
export type StageName = "beyond" | "deviation" | "near" | "unevenness" | "kept" | "sum";

/** A linear combination that should be close to `right`. */
interface Row {
  readonly sum: Sum;
  readonly right: number;
}

/** Rows whose distance from their right-hand side costs what exceeds `tolerance`. */
export interface Stage {
  readonly name: StageName;
  readonly rows: readonly Row[];
  readonly tolerance: number;
  /** True if the rows are sums of stitches, so that the excess is a whole number, which shortens the search. */
  readonly isWhole: boolean;
}

/** Counts that are solved together, with the measurements they should meet. */
export interface GroupRequest {
  readonly pattern: PatternDocument;
  readonly counts: readonly Count[];
  readonly measurements: readonly Measurement[];
  /** The tested grading; counts and sizes that it leaves out are unrestricted. */
  readonly near?: Grading;
  /** Deviation without cost, in tolerances. */
  readonly slack: number;
}

/** Later stages may exceed the optimum of an earlier one by this much, because sums of doubles depend on their order. */
export const STAGE_TOLERANCE = 1e-7;

/** The objectives that are minimised one after another for a group of counts. @see docs/method.md#grading. */
export function gradingStages({ pattern, counts, measurements, near, slack }: GroupRequest): Stage[] {
  const variables = countVariables(pattern, counts);
  const deviations = deviationRows(pattern, measurements, variables);
  const numbers = counts.flatMap(({ id }) => pattern.sizes.map((size, index) => ({ id, index, size: size.id })));
  const tested = numbers.flatMap(({ id, index, size }) => {
    const right = ownValue(ownValue(near, id), size);
    return right === undefined ? [] : [{ sum: [{ variable: variables.numberOf(id, index), weight: 1 }], right }];
  });
  const steps = numbers
    .filter(({ index }) => index > 0 && index < pattern.sizes.length - 1)
    .map(({ id, index }) => ({
      sum: [-1, 0, 1].map((offset) => ({
        variable: variables.numberOf(id, index + offset),
        weight: offset === 0 ? -2 : 1,
      })),
      right: 0,
    }));
  const kept = untargetedNumbers(pattern, counts).map(({ count, size, number }) => ({
    sum: [{ variable: variables.numberOf(count, size), weight: 1 }],
    right: number,
  }));
  const whole = numbers.map(({ id, index }) => ({ variable: variables.numberOf(id, index), weight: 1 }));
  return [
    { name: "beyond", rows: deviations, tolerance: 1, isWhole: false },
    { name: "deviation", rows: deviations, tolerance: slack, isWhole: false },
    { name: "near", rows: tested, tolerance: 0, isWhole: true },
    { name: "unevenness", rows: steps, tolerance: 0, isWhole: true },
    { name: "kept", rows: kept, tolerance: 0, isWhole: true },
    { name: "sum", rows: [{ sum: whole, right: 0 }], tolerance: 0, isWhole: true },
  ];
}

/** The numbers that counts without any target have: what is solved beside them should leave them as they are, where it can. */
function untargetedNumbers(pattern: PatternDocument, counts: readonly Count[]) {
  const targeted = new Set(pattern.measurements.flatMap(solvedCounts));
  return counts
    .filter(({ id }) => !targeted.has(id))
    .flatMap(({ id }) =>
      pattern.sizes.flatMap(({ id: sizeId }, size) => {
        const number = ownValue(ownValue(pattern.grading, id), sizeId);
        return number === undefined ? [] : [{ count: id, size, number }];
      }),
    );
}

/** More than all stitches of a group. */
const MOST_STITCHES = 2 ** 24;

/** The last two stages as one number. */
export function tieBreakOf({ kept, sum }: { readonly kept: number; readonly sum: number }): number {
  return kept * MOST_STITCHES + sum;
}

/** Cost of a stage at given values of the variables. */
export function costOf({ rows, tolerance }: Stage, values: readonly number[]): number {
  return rows.reduce((cost, { sum, right }) => {
    return cost + Math.max(0, Math.abs(valueOfSum(sum, values) - right) - tolerance);
  }, 0);
}

/** What a grading of the group costs in each stage. */
export function costsOfGrading(request: GroupRequest, grading: Grading): Readonly<Record<StageName, number>> {
  const { pattern, counts } = request;
  const { numberOf, total } = countVariables(pattern, counts);
  const values = new Array<number>(total).fill(0);
  for (const { id } of counts)
    for (const [index, size] of pattern.sizes.entries())
      values[numberOf(id, index)] = ownValue(ownValue(grading, id), size.id) ?? Number.NaN;
  const costs = { beyond: 0, deviation: 0, near: 0, unevenness: 0, kept: 0, sum: 0 };
  for (const stage of gradingStages(request)) costs[stage.name] = costOf(stage, values);
  return costs;
}

/** Constraints that keep every row within a tolerance of its right-hand side. */
export function rowsWithin({ rows }: Stage, free: number): Constraint[] {
  return rows.flatMap(({ sum, right }): Constraint[] => [
    { sum, relation: "<=", right: right + free },
    { sum, relation: ">=", right: right - free },
  ]);
}

/** A stage as a sum of auxiliary variables, one per row, each at least the row's excess; the first is `first`. */
export function excessSum({ rows, tolerance }: Stage, first: number): { sum: Sum; constraints: Constraint[] } {
  const constraints = rows.flatMap(({ sum, right }, index): Constraint[] => [
    { sum: [...sum, { variable: first + index, weight: -1 }], relation: "<=", right: right + tolerance },
    { sum: [...sum, { variable: first + index, weight: 1 }], relation: ">=", right: right - tolerance },
  ]);
  return { sum: rows.map((_, index) => ({ variable: first + index, weight: 1 })), constraints };
}
