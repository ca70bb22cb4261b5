import type { WorkRule } from "../garment";
import type { Measurement, PatternDocument } from "../pattern";

/** Counts that share a tie or a target, with the measurements that are solved for. */
export interface CountGroup {
  readonly counts: readonly string[];
  readonly measurements: readonly Measurement[];
}

/** Counts that are solved to meet a measurement's target: none if it has no target or contains a diagonal. */
export function solvedCounts({ terms, target }: Measurement): string[] {
  if (target === undefined || terms.some((term) => "diagonal" in term)) return [];
  return terms.flatMap((term) => ("count" in term ? [term.count] : []));
}

/**
 * Groups of counts that can be solved independently: no tie, no target and none of the given rules connects two of them.
 *
 * @param joining rules of the garment whose counts are to be solved together.
 * @see docs/method.md#grading.
 */
export function countGroups(pattern: PatternDocument, joining: readonly WorkRule[] = []): CountGroup[] {
  const groupOf = new Map(pattern.counts.map(({ id }) => [id, id]));
  const rootOf = (id: string): string => {
    const above = groupOf.get(id) ?? id;
    return above === id ? id : rootOf(above);
  };
  const join = ([first, ...others]: readonly string[]) => {
    if (first !== undefined) for (const other of others) groupOf.set(rootOf(other), rootOf(first));
  };
  for (const { count, equals } of pattern.ties) join([count, ...equals.map((part) => part.count)]);
  for (const measurement of pattern.measurements) join(solvedCounts(measurement));
  for (const { numbers } of joining) join(numbers.map(({ count }) => count));
  const roots = [...new Set(pattern.counts.map(({ id }) => rootOf(id)))];
  return roots.map((root) => ({
    counts: pattern.counts.map(({ id }) => id).filter((id) => rootOf(id) === root),
    measurements: pattern.measurements.filter((measurement) =>
      solvedCounts(measurement).some((id) => rootOf(id) === root),
    ),
  }));
}
