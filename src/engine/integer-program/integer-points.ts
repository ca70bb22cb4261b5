import { constraintRow, rangeLeft, rangeOfSum, type Box, type Range, type Row } from "./constraint-row";
import type { Constraint } from "./integer-program";

/** Maximum number of trials per requested point; with more, the search mostly runs into dead ends. */
const TRIALS_PER_POINT = 30;

/** Bound tightening may converge slowly; after this many rounds the search handles the rest. */
const MAX_ROUNDS = 100;

/**
 * All non-negative integer points that satisfy every constraint.
 *
 * @param variables number of variables; one that is in no constraint is 0 in every point.
 * @param most maximum number of points.
 * @returns the points, in the same order for the same constraints; null if there are more, if they are unbounded, or if the search takes long.
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

/** Bounds of each variable implied by all rows, given the bounds of the others. */
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

/** One variable of the search, with its rows and the range of their later variables. */
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

/** Depth-first search over the variables, each in the range that the earlier ones allow. */
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
  /** Partial sum of each row. */
  const partialSums: number[] = [];
  let tried = 0;
  /** @returns false if the search is abandoned. */
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
