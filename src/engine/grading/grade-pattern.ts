import type { Solver } from "../integer-program";
import { ownValue, sizeOrderFaults, type Fault, type Grading, type PatternDocument } from "../pattern";
import { workFaults, type GarmentFault } from "../garment";
import type { CountGroup } from "./count-groups";
import type { Clash } from "./find-clash";
import type { GradeRequest } from "./grade-request";
import {
  gradedMeasurements,
  gradingObjective,
  type GradedMeasurement,
  type GradingObjective,
} from "./graded-measurements";
import { joinAsNeeded } from "./join-as-needed";
import type { Limit, SolvedCounts } from "./solve-by-program";
import { solveCounts } from "./solve-counts";

/** What of a grading is not there, or is there and cannot be worked. */
export interface Unfinished {
  /** Counts that have no number, with what they lack; the others are solved all the same. */
  readonly missing?: readonly Fault[];
  /** Steps and seams that cannot be worked with these numbers, for a reason that is no rule of grading. */
  readonly unworkable?: readonly GarmentFault[];
}

export type GradeOutcome =
  | (Unfinished & {
      /** `limit` if a search stopped before optimality was proved; `bound` then has the stage and its lower bound. */
      readonly status: "optimal" | "limit";
      /** Without the counts of `missing`. */
      readonly grading: Grading;
      readonly measurements: readonly GradedMeasurement[];
      readonly objective: GradingObjective;
      readonly bound?: readonly Limit[];
    })
  | { readonly status: "infeasible"; readonly clash: readonly Clash[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

/**
 * All counts in all sizes: the optimum subject to repeats, ties, minimum values, locked counts, the order of sizes and how the
 * garment is worked.
 *
 * Counts that share no tie and no target are solved separately, unless the garment connects them. A group without a target keeps
 * its existing grading, and what has none is left out.
 *
 * @param request slack defaults to 0.
 * @param solver exact, to a relative and absolute gap of 0.
 * @returns the grading with the resulting measurements; or one conflict; or faults where the sizes are out of order.
 * @see docs/method.md#grading.
 */
export function gradePattern({ pattern, slack = 0, near }: GradeRequest, solver: Solver): GradeOutcome {
  const faults: Fault[] = sizeOrderFaults(pattern);
  if (faults.length > 0) return { status: "faults", faults };
  const solved = joinAsNeeded(pattern, (groups) =>
    solveGroups(pattern, groups, (group) => solveCounts({ pattern, group, near, slack, solver })),
  );
  if (solved.status === "infeasible") return solved;
  const graded: PatternDocument = { ...pattern, grading: solved.grading };
  const measurements = gradedMeasurements(graded);
  const { limits } = solved;
  return {
    status: limits.length > 0 ? "limit" : "optimal",
    grading: solved.grading,
    measurements,
    objective: gradingObjective(graded, measurements, slack),
    ...(limits.length > 0 ? { bound: limits } : {}),
    ...(solved.missing.length > 0 ? { missing: solved.missing } : {}),
    ...unworkableOf(graded),
  };
}

interface SolvedGroups {
  readonly status: "solved";
  readonly grading: Grading;
  readonly gradings: readonly [Grading];
  readonly limits: readonly Limit[];
  readonly missing: readonly Fault[];
}

function solveGroups(
  pattern: PatternDocument,
  groups: readonly CountGroup[],
  solve: (group: CountGroup) => SolvedCounts,
): SolvedGroups | { readonly status: "infeasible"; readonly clash: readonly Clash[]; readonly gradings?: never } {
  const limits: Limit[] = [];
  const missing: Fault[] = [];
  const found: Grading = {};
  for (const group of groups) {
    if (group.measurements.length === 0) {
      const existing = existingCounts(pattern, group);
      missing.push(...existing.missing);
      Object.assign(found, existing.grading);
      continue;
    }
    const solved = solve(group);
    if (solved.status === "infeasible") return solved;
    if (solved.status === "unproven") {
      missing.push(unsolvedFault(pattern, group, solved.message));
      continue;
    }
    if (solved.status === "limit") limits.push(solved.limit);
    Object.assign(found, solved.grading);
  }
  const grading = inPatternOrder(pattern, found);
  return { status: "solved", grading, gradings: [grading], limits, missing };
}

/** What of a graded garment cannot be worked, where there is anything. */
export function unworkableOf(graded: PatternDocument): Pick<Unfinished, "unworkable"> {
  const unworkable = workFaults(graded);
  return unworkable.length > 0 ? { unworkable } : {};
}

/** Counts of which neither a grading was found nor proved that there is none. */
export function unsolvedFault(pattern: PatternDocument, group: CountGroup, message: string): Fault {
  return { path: "counts", says: `${namesOf(pattern, group)} could not be solved: ${message}.` };
}

/** The numbers of a group without a target: locked ones, and those of the grading; a count without one in some size is left out. */
export function existingCounts(
  pattern: PatternDocument,
  { counts }: CountGroup,
): { readonly grading: Grading; readonly missing: readonly Fault[] } {
  const missing: Fault[] = [];
  const grading: Grading = {};
  for (const id of counts) {
    const index = pattern.counts.findIndex((count) => count.id === id);
    const numbers = pattern.sizes.flatMap((size) => {
      const value =
        ownValue(pattern.counts[index]?.locked, size.id) ?? ownValue(ownValue(pattern.grading, id), size.id);
      return value === undefined ? [] : [[size.id, value] as const];
    });
    if (numbers.length === pattern.sizes.length) Object.assign(grading, { [id]: Object.fromEntries(numbers) });
    else {
      const says = `“${pattern.counts[index]?.label ?? id}” has no target, so it can't be calculated. Enter its numbers, or give a measurement that uses it a target.`;
      missing.push({ path: `counts[${index}]`, says });
    }
  }
  return { grading, missing };
}

function namesOf(pattern: PatternDocument, { counts }: CountGroup): string {
  return pattern.counts.flatMap(({ id, label }) => (counts.includes(id) ? [`“${label}”`] : [])).join(", ");
}

/** A grading with the counts in the pattern's order. */
export function inPatternOrder({ counts }: PatternDocument, grading: Grading): Grading {
  return Object.fromEntries(
    counts.flatMap(({ id }) => {
      const numbers = ownValue(grading, id);
      return numbers === undefined ? [] : [[id, numbers]];
    }),
  );
}
