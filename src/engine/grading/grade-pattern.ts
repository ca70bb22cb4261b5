import type { Solver } from "../integer-program";
import { ownValue, sizeOrderFaults, type Fault, type Grading, type PatternDocument } from "../pattern";
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
      /** `limit` if a search stopped before optimality was proved; `bound` then has the stage and its lower bound. */
      readonly status: "optimal" | "limit";
      readonly grading: Grading;
      readonly measurements: readonly GradedMeasurement[];
      readonly objective: GradingObjective;
      readonly bound?: readonly Limit[];
    }
  | { readonly status: "infeasible"; readonly clash: readonly Clash[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

/**
 * All counts in all sizes: the optimum subject to repeats, ties, minimum values, locked counts and the order of sizes.
 *
 * Counts that share no tie and no target are solved separately. A group without a target keeps its existing grading.
 *
 * @param request slack defaults to 0.
 * @param solver exact, to a relative and absolute gap of 0.
 * @returns the grading with the resulting measurements; or one conflict; or faults: sizes out of order, counts without a target or numbers.
 * @see docs/method.md#grading.
 */
export function gradePattern({ pattern, slack = 0, near }: GradeRequest, solver: Solver): GradeOutcome {
  const limits: Limit[] = [];
  const faults: Fault[] = sizeOrderFaults(pattern);
  if (faults.length > 0) return { status: "faults", faults };
  let grading: Grading = {};
  for (const group of countGroups(pattern)) {
    if (group.measurements.length === 0) {
      const existing = existingCounts(pattern, group);
      faults.push(...existing.faults);
      grading = { ...grading, ...existing.grading };
      continue;
    }
    const solved = solveCounts({ pattern, group, near, slack, solver });
    if (solved.status === "infeasible") return solved;
    if (solved.status === "unproven") {
      faults.push(unsolvedFault(pattern, group, solved.message));
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

/** Counts of which neither a grading was found nor proved that there is none. */
export function unsolvedFault(pattern: PatternDocument, group: CountGroup, message: string): Fault {
  return { path: "counts", says: `${namesOf(pattern, group)} could not be solved: ${message}.` };
}

/** The numbers of a group without a target: locked ones, and those of the grading. */
export function existingCounts(
  pattern: PatternDocument,
  { counts }: CountGroup,
): { grading: Grading; faults: Fault[] } {
  const faults: Fault[] = [];
  const kept = counts.map((id) => {
    const index = pattern.counts.findIndex((count) => count.id === id);
    const values = pattern.sizes.map((size) => {
      const value =
        ownValue(pattern.counts[index]?.locked, size.id) ?? ownValue(ownValue(pattern.grading, id), size.id);
      return [size.id, value] as const;
    });
    if (values.some(([, value]) => value === undefined)) {
      const says = `“${pattern.counts[index]?.label ?? id}” has no target, so it can't be calculated. Enter its numbers, or give a measurement that uses it a target.`;
      faults.push({ path: `counts[${index}]`, says });
    }
    return [id, Object.fromEntries(values.map(([size, value]) => [size, value ?? Number.NaN]))] as const;
  });
  return { grading: Object.fromEntries(kept), faults };
}

function namesOf(pattern: PatternDocument, { counts }: CountGroup): string {
  return pattern.counts.flatMap(({ id, label }) => (counts.includes(id) ? [`“${label}”`] : [])).join(", ");
}

/** A grading with the counts in the pattern's order. */
export function inPatternOrder(pattern: PatternDocument, grading: Grading): Grading {
  return Object.fromEntries(pattern.counts.map(({ id }) => [id, ownValue(grading, id) ?? {}]));
}
