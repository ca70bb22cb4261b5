import { constraintRow, rangeLeft, rangeOfSum, type Box, type Range, type Row } from "./constraint-row";
import type { Constraint } from "./integer-program";

/** Numbers that may be tried for each point worth having: more, and the search mostly runs into dead ends. */
const TRIED_A_POINT = 30;

/** Bounds may creep towards each other for ever; where they have not met by then, the search sorts it out. */
const MOST_ROUNDS = 100;

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
  most,
}: {
  readonly variables: number;
  readonly constraints: readonly Constraint[];
  readonly most: number;
}): number[][] | null {
  const rows = constraints.map(constraintRow);
  if (rows.some(({ sum, low, high }) => sum.length === 0 && (low > 0 || high < 0))) return [];
  const box = narrowestBox(rows, variables);
  const width = (variable: number) => (box.high[variable] ?? 0) - (box.low[variable] ?? 0);
  const bound = [...new Set(rows.flatMap(({ sum }) => sum.map(({ variable }) => variable)))];
  if (bound.some((variable) => width(variable) < 0)) return [];
  if (bound.some((variable) => width(variable) === Number.POSITIVE_INFINITY)) return null;
  const order = bound.sort((one, other) => width(one) - width(other) || one - other);
  return pointsInBox({ steps: searchSteps(rows, box, order), variables, most });
}

/** The bounds of each variable that all rows leave it, given the bounds of the others. */
function narrowestBox(rows: readonly Row[], variables: number): Box {
  const low = new Array<number>(variables).fill(0);
  const high = new Array<number>(variables).fill(Number.POSITIVE_INFINITY);
  let isNarrowed = true;
  for (let round = 0; isNarrowed && round < MOST_ROUNDS; round += 1) {
    isNarrowed = false;
    for (const row of rows) {
      for (const { variable, weight } of row.sum) {
        const others = row.sum.filter((term) => term.variable !== variable);
        const { least, most } = rangeLeft(row, weight, rangeOfSum(others, { low, high }));
        if (least > (low[variable] ?? 0)) [low[variable], isNarrowed] = [least, true];
        if (most < (high[variable] ?? 0)) [high[variable], isNarrowed] = [most, true];
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
      least: box.low[variable] ?? 0,
      most: box.high[variable] ?? 0,
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
  most,
}: {
  steps: readonly Step[];
  variables: number;
  most: number;
}): number[][] | null {
  const points: number[][] = [];
  const point = new Array<number>(variables).fill(0);
  /** What each row comes to so far. */
  const made: number[] = [];
  let tried = 0;
  /** @returns false where the search is given up. */
  const tryFrom = (depth: number): boolean => {
    const step = steps[depth];
    if (step === undefined) return points.push([...point]) <= most;
    const before = step.rows.map(({ index }) => made[index] ?? 0);
    const left = rangeOfStep(step, before);
    for (let number = left.least; number <= left.most; number += 1) {
      point[step.variable] = number;
      for (const [at, { index, weight }] of step.rows.entries()) made[index] = (before[at] ?? 0) + weight * number;
      tried += 1;
      if (tried > TRIED_A_POINT * most || !tryFrom(depth + 1)) return false;
    }
    for (const [at, { index }] of step.rows.entries()) made[index] = before[at] ?? 0;
    return true;
  };
  return tryFrom(0) ? points : null;
}

function rangeOfStep({ rows, ...bounds }: Step, made: readonly number[]): Range {
  let { least, most } = bounds;
  for (const [at, { weight, later, ...row }] of rows.entries()) {
    const done = made[at] ?? 0;
    const left = rangeLeft(row, weight, { least: done + later.least, most: done + later.most });
    least = Math.max(least, left.least);
    most = Math.min(most, left.most);
  }
  return { least, most };
}
