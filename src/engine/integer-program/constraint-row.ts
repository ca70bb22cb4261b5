import type { Constraint, Sum } from "./integer-program";
import { mergeSum } from "./merge-sum";

/** A constraint as a sum between two bounds, infinite where there is none. */
export interface Row {
  readonly sum: Sum;
  readonly low: number;
  readonly high: number;
}

/** Bounds of each variable, whole. */
export interface Box {
  readonly low: number[];
  readonly high: number[];
}

export interface Range {
  readonly least: number;
  readonly most: number;
}

/** Sums of doubles do not come out the same twice. */
const ROUNDING = 1e-9;

export function constraintRow({ sum, relation, right }: Constraint): Row {
  return {
    sum: mergeSum(sum),
    low: relation === "<=" ? Number.NEGATIVE_INFINITY : right,
    high: relation === ">=" ? Number.POSITIVE_INFINITY : right,
  };
}

/** The least and the most that a sum comes to in a box. */
export function rangeOfSum(sum: Sum, { low, high }: Box): Range {
  let [least, most] = [0, 0];
  for (const { variable, weight } of sum) {
    const [one, other] = [weight * (low[variable] ?? 0), weight * (high[variable] ?? 0)];
    least += Math.min(one, other);
    most += Math.max(one, other);
  }
  return { least, most };
}

/** The whole numbers that a row leaves one of its variables, where the rest of its sum lies in a range. */
export function rangeLeft({ low, high }: Pick<Row, "low" | "high">, weight: number, rest: Range): Range {
  const [one, other] = [(low - rest.most) / weight, (high - rest.least) / weight];
  return { least: Math.ceil(Math.min(one, other) - ROUNDING), most: Math.floor(Math.max(one, other) + ROUNDING) };
}
