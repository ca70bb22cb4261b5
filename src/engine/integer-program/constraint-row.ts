import { type Constraint, type Sum, mergeSum } from "./integer-program";

/** A constraint as a sum between two bounds, which may be infinite. */
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
  readonly min: number;
  readonly max: number;
}

/** Sums of doubles depend on their order. */
const ROUNDING = 1e-9;

export function constraintRow({ sum, relation, right }: Constraint): Row {
  return {
    sum: mergeSum(sum),
    low: relation === "<=" ? Number.NEGATIVE_INFINITY : right,
    high: relation === ">=" ? Number.POSITIVE_INFINITY : right,
  };
}

/** Minimum and maximum of a sum over a box. */
export function rangeOfSum(sum: Sum, { low, high }: Box): Range {
  let [min, max] = [0, 0];
  for (const { variable, weight } of sum) {
    const [one, other] = [weight * (low[variable] ?? 0), weight * (high[variable] ?? 0)];
    min += Math.min(one, other);
    max += Math.max(one, other);
  }
  return { min, max };
}

/** Range of whole numbers that a row allows for one variable, if the rest of its sum lies in a range. */
export function rangeLeft({ low, high }: Pick<Row, "low" | "high">, weight: number, rest: Range): Range {
  const [one, other] = [(low - rest.max) / weight, (high - rest.min) / weight];
  return { min: Math.ceil(Math.min(one, other) - ROUNDING), max: Math.floor(Math.max(one, other) + ROUNDING) };
}
