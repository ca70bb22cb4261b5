import type { Solver } from "../integer-program";
import { own, sizeOrderFaults, type Fault, type Grading, type PatternDocument } from "../pattern";
import { countGroups, type CountGroup } from "./count-groups";
import type { Clash } from "./find-clash";
import type { GradeRequest } from "./grade-request";
import {
  gradedMeasurements,
  gradingObjective,
  type GradedMeasurement,
  type GradingObjective,
} from "./graded-measurements";
import type { Limit } from "./solve-by-program";
import { solveCounts } from "./solve-counts";

export type GradeOutcome =
  | {
      /** `limit` where a search stopped short of the proof; `bound` then says where, and what cannot be beaten. */
      readonly status: "optimal" | "limit";
      readonly grading: Grading;
      readonly measurements: readonly GradedMeasurement[];
      readonly objective: GradingObjective;
      readonly bound?: readonly Limit[];
    }
  | { readonly status: "infeasible"; readonly clash: readonly Clash[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

/**
 * All counts in all sizes: the best that keeps every repeat, tie, least value, locked count and the order of sizes.
 *
 * Counts that share no tie and no target are solved apart. A group without any target keeps the grading it has.
 *
 * @param request slack 0 where left out.
 * @param solver exact, to a relative and absolute gap of 0.
 * @returns the grading with what each measurement comes to; or one clash; or faults: sizes out of order, counts that nothing decides.
 * @see docs/method.md#grading.
 */
export function gradePattern({ pattern, slack = 0, near }: GradeRequest, solver: Solver): GradeOutcome {
  const limits: Limit[] = [];
  const faults: Fault[] = sizeOrderFaults(pattern);
  if (faults.length > 0) return { status: "faults", faults };
  let grading: Grading = {};
  for (const group of countGroups(pattern)) {
    if (group.measurements.length === 0) {
      const kept = keptCounts(pattern, group);
      faults.push(...kept.faults);
      grading = { ...grading, ...kept.grading };
      continue;
    }
    const solved = solveCounts({ pattern, group, near, slack, solver });
    if (solved.status === "infeasible") return solved;
    if (solved.status === "unproven") {
      faults.push({ path: "counts", says: `${namesOf(pattern, group)} could not be solved: ${solved.says}.` });
      continue;
    }
    if (solved.status === "limit") limits.push(solved.limit);
    grading = { ...grading, ...solved.grading };
  }
  if (faults.length > 0) return { status: "faults", faults };
  const graded: PatternDocument = { ...pattern, grading: inPatternOrder(pattern, grading) };
  const measurements = gradedMeasurements(graded);
  return {
    status: limits.length > 0 ? "limit" : "optimal",
    grading: graded.grading ?? {},
    measurements,
    objective: gradingObjective(graded, measurements, slack),
    ...(limits.length > 0 ? { bound: limits } : {}),
  };
}

function keptCounts(pattern: PatternDocument, { counts }: CountGroup): { grading: Grading; faults: Fault[] } {
  const faults: Fault[] = [];
  const kept = counts.map((id) => {
    const at = pattern.counts.findIndex((count) => count.id === id);
    const values = pattern.sizes.map((size) => {
      const value = own(pattern.counts[at]?.locked, size.id) ?? own(own(pattern.grading, id), size.id);
      return [size.id, value] as const;
    });
    if (values.some(([, value]) => value === undefined)) {
      const says = `“${pattern.counts[at]?.label ?? id}” is free: no target decides it. Type its numbers, or give a measurement that it makes a target.`;
      faults.push({ path: `counts[${at}]`, says });
    }
    return [id, Object.fromEntries(values.map(([size, value]) => [size, value ?? Number.NaN]))] as const;
  });
  return { grading: Object.fromEntries(kept), faults };
}

function namesOf(pattern: PatternDocument, { counts }: CountGroup): string {
  return pattern.counts.flatMap(({ id, label }) => (counts.includes(id) ? [`“${label}”`] : [])).join(", ");
}

function inPatternOrder(pattern: PatternDocument, grading: Grading): Grading {
  return Object.fromEntries(pattern.counts.map(({ id }) => [id, own(grading, id) ?? {}]));
}
