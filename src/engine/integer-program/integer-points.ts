import { constraintRow, rangeLeft, rangeOfSum, type Box, type Range, type Row } from "./constraint-row";
import type { Constraint } from "./integer-program";

/** Numbers that may be tried for each point worth having: more, and the search mostly runs into dead ends. */
const TRIALS_PER_POINT = 30;

/** Bounds may creep towards each other for ever; where they have not met by then, the search sorts it out. */
const MAX_ROUNDS = 100;

/**
 * All whole points of 0 or more that keep every constraint.
 *
 * @param variables how many; one that stands in no constraint is 0 in every point.
 * @param most how many points are worth having.
 * @returns the points, in the same order for the same constraints; null where there are more, where they have no bounds, or where the search for them is long.
 */
export function integerPoints({
  variables,
  constraints,
  maxPoints,
}: {
  readonly variables: number;
  readonly constraints: readonly Constraint[];
  readonly maxPoints: number;
}): number[][] | null {
  const rows = constraints.map(constraintRow);
  if (rows.some(({ sum, low, high }) => sum.length === 0 && (low > 0 || high < 0))) return [];
  const box = narrowestBox(rows, variables);
  const width = (variable: number) => (box.high[variable] ?? 0) - (box.low[variable] ?? 0);
  const bound = [...new Set(rows.flatMap(({ sum }) => sum.map(({ variable }) => variable)))];
  if (bound.some((variable) => width(variable) < 0)) return [];
  if (bound.some((variable) => width(variable) === Number.POSITIVE_INFINITY)) return null;
  const order = bound.sort((one, other) => width(one) - width(other) || one - other);
  return pointsInBox({ steps: searchSteps(rows, box, order), variables, maxPoints });
}

/** The bounds of each variable that all rows leave it, given the bounds of the others. */
function narrowestBox(rows: readonly Row[], variables: number): Box {
  const low = new Array<number>(variables).fill(0);
  const high = new Array<number>(variables).fill(Number.POSITIVE_INFINITY);
  let isNarrowed = true;
  for (let round = 0; isNarrowed && round < MAX_ROUNDS; round += 1) {
    isNarrowed = false;
    for (const row of rows) {
      for (const { variable, weight } of row.sum) {
        const others = row.sum.filter((term) => term.variable !== variable);
        const { min, max } = rangeLeft(row, weight, rangeOfSum(others, { low, high }));
        if (min > (low[variable] ?? 0)) [low[variable], isNarrowed] = [min, true];
        if (max < (high[variable] ?? 0)) [high[variable], isNarrowed] = [max, true];
      }
    }
  }
  return { low, high };
}

/** One variable to try, with the rows that it stands in and what their later variables may still add. */
interface Step extends Range {
  readonly variable: number;
  readonly rows: readonly (Pick<Row, "low" | "high"> & {
    readonly index: number;
    readonly weight: number;
    readonly later: Range;
  })[];
}

function searchSteps(rows: readonly Row[], box: Box, order: readonly number[]): Step[] {
  return order.map((variable, depth) => {
    const later = new Set(order.slice(depth + 1));
    return {
      variable,
      min: box.low[variable] ?? 0,
      max: box.high[variable] ?? 0,
      rows: rows.flatMap(({ sum, low, high }, index) => {
        const weight = sum.find((term) => term.variable === variable)?.weight;
        if (weight === undefined) return [];
        const rest = sum.filter((term) => later.has(term.variable));
        return [{ index, low, high, weight, later: rangeOfSum(rest, box) }];
      }),
    };
  });
}

/** Tries the variables one after another, each with the numbers that the ones before it leave it. */
function pointsInBox({
  steps,
  variables,
  maxPoints,
}: {
  steps: readonly Step[];
  variables: number;
  maxPoints: number;
}): number[][] | null {
  const points: number[][] = [];
  const point = new Array<number>(variables).fill(0);
  /** What each row comes to so far. */
  const partialSums: number[] = [];
  let tried = 0;
  /** @returns false where the search is given up. */
  const tryFrom = (depth: number): boolean => {
    const step = steps[depth];
    if (step === undefined) return points.push([...point]) <= maxPoints;
    const before = step.rows.map(({ index }) => partialSums[index] ?? 0);
    const left = rangeOfStep(step, before);
    for (let number = left.min; number <= left.max; number += 1) {
      point[step.variable] = number;
      for (const [position, { index, weight }] of step.rows.entries())
        partialSums[index] = (before[position] ?? 0) + weight * number;
      tried += 1;
      if (tried > TRIALS_PER_POINT * maxPoints || !tryFrom(depth + 1)) return false;
    }
    for (const [position, { index }] of step.rows.entries()) partialSums[index] = before[position] ?? 0;
    return true;
  };
  return tryFrom(0) ? points : null;
}

function rangeOfStep({ rows, ...bounds }: Step, made: readonly number[]): Range {
  let { min, max } = bounds;
  for (const [index, { weight, later, ...row }] of rows.entries()) {
    const done = made[index] ?? 0;
    const left = rangeLeft(row, weight, { min: done + later.min, max: done + later.max });
    min = Math.max(min, left.min);
    max = Math.min(max, left.max);
  }
  return { min, max };
}
