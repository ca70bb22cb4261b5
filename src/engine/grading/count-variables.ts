import type { Count, PatternDocument } from "../pattern";

/** Where the variables of a grading stand: each count's number in each size, then how many repeats that is. */
export interface CountVariables {
  readonly numberOf: (count: string, size: number) => number;
  readonly repeatsOf: (count: string, size: number) => number;
  /** How many there are. */
  readonly total: number;
}

/** Variables for some counts in all sizes; sizes by their place. */
export function countVariables(pattern: PatternDocument, counts: readonly Count[]): CountVariables {
  const order = new Map(counts.map(({ id }, at) => [id, at]));
  const sizes = pattern.sizes.length;
  const numberOf = (count: string, size: number) => (order.get(count) ?? 0) * sizes + size;
  return {
    numberOf,
    repeatsOf: (count, size) => counts.length * sizes + numberOf(count, size),
    total: 2 * counts.length * sizes,
  };
}
