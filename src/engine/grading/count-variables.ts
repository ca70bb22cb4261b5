import type { Count, Grading, PatternDocument } from "../pattern";
import { workRulesOf } from "./work-rules-of";

/** Indices of a grading's variables: each count's number in each size, its number of repeats, then how often each multiple that the garment asks for. */
export interface CountVariables {
  readonly numberOf: (count: string, size: number) => number;
  readonly repeatsOf: (count: string, size: number) => number;
  /** @param index among the garment's rules of these counts that ask for a multiple. */
  readonly multipleOf: (index: number) => number;
  /** Number of variables. */
  readonly total: number;
}

/** Variables for some counts in all sizes; sizes by index. */
export function countVariables(pattern: PatternDocument, counts: readonly Count[]): CountVariables {
  const order = new Map(counts.map(({ id }, index) => [id, index]));
  const sizes = pattern.sizes.length;
  const numberOf = (count: string, size: number) => (order.get(count) ?? 0) * sizes + size;
  const numbers = 2 * counts.length * sizes;
  const multiples = workRulesOf(pattern, counts).filter(({ requires }) => "multipleOf" in requires).length;
  return {
    numberOf,
    multipleOf: (index) => numbers + index,
    repeatsOf: (count, size) => counts.length * sizes + numberOf(count, size),
    total: numbers + multiples,
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
