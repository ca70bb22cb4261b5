import type { Solver } from "../integer-program";
import { sizeOrderFaults, type Fault, type Grading, type PatternDocument } from "../pattern";
import { countGroups, type CountGroup } from "./count-groups";
import { bestTradeOffs, type TradeOff } from "./trade-off";
import { existingCounts, inPatternOrder, unsolvedFault, type GradeOutcome } from "./grade-pattern";
import { costsOfGrading } from "./grading-stages";
import { groupFrontier, type GroupTradeOff } from "./group-frontier";
import type { Limit } from "./solve-by-program";

/** A grading that no other beats in both: none that is as close to the targets is more even, and none as even is closer. */
interface GradingTradeOff {
  /** Σ |deviation| of what is solved for, in tolerances. */
  readonly deviation: number;
  /** Σ of the absolute second differences of all counts, in stitches and rows. */
  readonly unevenness: number;
  readonly grading: Grading;
}

export type FrontierOutcome =
  | {
      /** `limit` if a search stopped before it was proved that no trade-off is missing or can be better. */
      readonly status: "optimal" | "limit";
      /** Nearest to the targets first. */
      readonly frontier: readonly GradingTradeOff[];
      readonly bound?: readonly Limit[];
    }
  | Exclude<GradeOutcome, { readonly grading: unknown }>;

/** A trade-off of the groups so far, with the grading of each. */
interface Combined extends TradeOff {
  readonly gradings: readonly Grading[];
}

/**
 * Every best trade-off between being close to the targets and even steps, of gradings that keep all rules and exceed
 * tolerances least; among equals the one with the fewest stitches.
 *
 * Groups of counts that share no tie and no target add up, so that the best of all are sums of the best of each.
 *
 * @param pattern as for `gradePattern`.
 * @param solver exact, to a relative and absolute gap of 0.
 * @returns as `gradePattern` where there is no grading.
 * @see docs/method.md#grading.
 */
export function gradeFrontier(pattern: PatternDocument, solver: Solver): FrontierOutcome {
  const limits: Limit[] = [];
  const faults: Fault[] = sizeOrderFaults(pattern);
  if (faults.length > 0) return { status: "faults", faults };
  let combined: readonly Combined[] = [{ deviation: 0, unevenness: 0, sum: 0, gradings: [] }];
  for (const group of countGroups(pattern)) {
    const found = frontierOf(pattern, group, solver);
    if (found.status === "infeasible") return found;
    if (found.status === "faults") faults.push(...found.faults);
    else {
      if (found.status === "limit") limits.push(found.limit);
      combined = bestTradeOffs(combined.flatMap((one) => found.tradeOffs.map((other) => together(one, other))));
    }
  }
  if (faults.length > 0) return { status: "faults", faults };
  const frontier = combined.map(({ deviation, unevenness, gradings }) => ({
    ...{ deviation, unevenness },
    grading: inPatternOrder(pattern, Object.assign({}, ...gradings)),
  }));
  return limits.length > 0 ? { status: "limit", frontier, bound: limits } : { status: "optimal", frontier };
}

type Found =
  | { readonly status: "optimal"; readonly tradeOffs: readonly GroupTradeOff[] }
  | { readonly status: "limit"; readonly tradeOffs: readonly GroupTradeOff[]; readonly limit: Limit }
  | Exclude<FrontierOutcome, { readonly frontier: unknown }>;

function frontierOf(pattern: PatternDocument, group: CountGroup, solver: Solver): Found {
  const counts = pattern.counts.filter(({ id }) => group.counts.includes(id));
  const { measurements } = group;
  if (measurements.length > 0) {
    const found = groupFrontier({ pattern, counts, measurements }, solver);
    return found.status === "unproven"
      ? { status: "faults", faults: [unsolvedFault(pattern, group, found.message)] }
      : found;
  }
  const { faults, grading } = existingCounts(pattern, group);
  if (faults.length > 0) return { status: "faults", faults };
  const { unevenness, sum } = costsOfGrading({ pattern, counts, measurements, slack: 0 }, grading);
  return { status: "optimal", tradeOffs: [{ deviation: 0, unevenness, sum, grading }] };
}

function together(one: Combined, other: GroupTradeOff): Combined {
  return {
    deviation: one.deviation + other.deviation,
    unevenness: one.unevenness + other.unevenness,
    sum: one.sum + other.sum,
    gradings: [...one.gradings, other.grading],
  };
}
