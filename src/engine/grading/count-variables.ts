import type { Count, Grading, PatternDocument } from "../pattern";

/** Indices of a grading's variables: each count's number in each size, then its number of repeats. */
export interface CountVariables {
  readonly numberOf: (count: string, size: number) => number;
  readonly repeatsOf: (count: string, size: number) => number;
  /** Number of variables. */
  readonly total: number;
}

/** Variables for some counts in all sizes; sizes by index. */
export function countVariables(pattern: PatternDocument, counts: readonly Count[]): CountVariables {
  const order = new Map(counts.map(({ id }, index) => [id, index]));
  const sizes = pattern.sizes.length;
  const numberOf = (count: string, size: number) => (order.get(count) ?? 0) * sizes + size;
  return {
    numberOf,
    repeatsOf: (count, size) => counts.length * sizes + numberOf(count, size),
    total: 2 * counts.length * sizes,
  };
}

/** The grading of some counts, from the values of their variables. */
export function gradingAt(
  { pattern, counts }: { readonly pattern: PatternDocument; readonly counts: readonly Count[] },
  values: readonly number[],
): Grading {
  const { numberOf } = countVariables(pattern, counts);
  const bySize = (id: string) =>
    pattern.sizes.map((size, index) => [size.id, values[numberOf(id, index)] ?? Number.NaN]);
  return Object.fromEntries(counts.map(({ id }) => [id, Object.fromEntries(bySize(id))]));
}
