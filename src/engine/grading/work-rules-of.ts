import { workRules, type WorkRule } from "../garment";
import type { Count, PatternDocument } from "../pattern";

/** What a garment's steps ask of some counts alone. */
export function workRulesOf(pattern: PatternDocument, counts: readonly Count[]): WorkRule[] {
  const own = new Set(counts.map(({ id }) => id));
  return workRules(pattern).filter(({ numbers }) => numbers.every(({ count }) => own.has(count)));
}
