import type { Solver } from "../integer-program";
import { sizeOrderFaults, type Fault, type Grading, type PatternDocument } from "../pattern";
import type { CountGroup } from "./count-groups";
import { bestTradeOffs, type TradeOff } from "./trade-off";
import {
  existingCounts,
  inPatternOrder,
  unsolvedFault,
  unworkableOf,
  type GradeOutcome,
  type Unfinished,
} from "./grade-pattern";
import { costsOfGrading, tieBreakOf } from "./grading-stages";
import { joinAsNeeded } from "./join-as-needed";
import { groupFrontier, type GroupTradeOff } from "./group-frontier";
import type { Limit } from "./solve-by-program";

/** A grading that no other beats in both: none that is as close to the targets is more even, and none as even is closer. */
export interface GradingTradeOff extends Pick<Unfinished, "unworkable"> {
  /** Σ |deviation| of what is solved for, in tolerances. */
  readonly deviation: number;
  /** Σ of the absolute second differences of all counts, in stitches and rows. */
  readonly unevenness: number;
  readonly grading: Grading;
}

export type FrontierOutcome =
  | (Pick<Unfinished, "missing"> & {
      /** `limit` if a search stopped before it was proved that no trade-off is missing or can be better. */
      readonly status: "optimal" | "limit";
      /** Nearest to the targets first. */
      readonly frontier: readonly GradingTradeOff[];
      readonly bound?: readonly Limit[];
    })
  | Exclude<GradeOutcome, { readonly grading: unknown }>;

/** A trade-off of the groups so far, with the grading of each. */
interface Combined extends TradeOff {
  readonly gradings: readonly Grading[];
}

/**
 * Every best trade-off between being close to the targets and even steps, of gradings that keep all rules and exceed
 * tolerances least; among equals the one whose untargeted counts stay nearest to their numbers, then with the fewest stitches.
 *
 * Groups of counts that share no tie and no target add up, so that the best of all are sums of the best of each.
 *
 * @param pattern as for `gradePattern`.
 * @param solver exact, to a relative and absolute gap of 0.
 * @returns as `gradePattern` where there is no grading.
 * @see docs/method.md#grading.
 */
export function gradeFrontier(pattern: PatternDocument, solver: Solver): FrontierOutcome {
  const faults: Fault[] = sizeOrderFaults(pattern);
  if (faults.length > 0) return { status: "faults", faults };
  const solved = joinAsNeeded(pattern, (groups) => frontierOfGroups(pattern, groups, solver));
  if (solved.status === "infeasible") return { status: solved.status, clash: solved.clash };
  const { combined, gradings, limits, missing } = solved;
  const frontier = combined.map(({ deviation, unevenness }, index) => {
    const grading = gradings[index] ?? {};
    return { deviation, unevenness, grading, ...unworkableOf({ ...pattern, grading }) };
  });
  return {
    status: limits.length > 0 ? "limit" : "optimal",
    frontier,
    ...(limits.length > 0 ? { bound: limits } : {}),
    ...(missing.length > 0 ? { missing } : {}),
  };
}

function frontierOfGroups(pattern: PatternDocument, groups: readonly CountGroup[], solver: Solver) {
  const limits: Limit[] = [];
  const missing: Fault[] = [];
  let combined: readonly Combined[] = [{ deviation: 0, unevenness: 0, tieBreak: 0, gradings: [] }];
  for (const { counts: ids, measurements } of groups) {
    const counts = pattern.counts.filter(({ id }) => ids.includes(id));
    const group = { counts: ids, measurements };
    const found = measurements.length > 0 ? groupFrontier({ pattern, counts, measurements }, solver) : existing(group);
    if (found.status === "infeasible") return { ...found, gradings: [] };
    if (found.status === "unproven") {
      missing.push(unsolvedFault(pattern, group, found.message));
      continue;
    }
    if (found.status === "limit") limits.push(found.limit);
    combined = bestTradeOffs(combined.flatMap((one) => found.tradeOffs.map((other) => together(one, other))));
  }
  const gradings = combined.map((one) => inPatternOrder(pattern, Object.assign({}, ...one.gradings)));
  return { status: "solved", combined, gradings, limits, missing } as const;

  function existing(group: CountGroup) {
    const { grading, missing: lacking } = existingCounts(pattern, group);
    missing.push(...lacking);
    const counts = pattern.counts.filter(({ id }) => Object.hasOwn(grading, id));
    const { unevenness, ...last } = costsOfGrading({ pattern, counts, measurements: [], slack: 0 }, grading);
    const tradeOff = { deviation: 0, unevenness, tieBreak: tieBreakOf(last), grading };
    return { status: "optimal" as const, tradeOffs: [tradeOff] };
  }
}

function together(one: Combined, other: GroupTradeOff): Combined {
  return {
    deviation: one.deviation + other.deviation,
    unevenness: one.unevenness + other.unevenness,
    tieBreak: one.tieBreak + other.tieBreak,
    gradings: [...one.gradings, other.grading],
  };
}
