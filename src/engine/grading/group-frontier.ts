import type { Solver } from "../integer-program";
import type { Grading } from "../pattern";
import { frontierPaths, type FrontierPath } from "./frontier-paths";
import { bestTradeOffs, type TradeOff } from "./trade-off";
import { costsOfGrading, STAGE_TOLERANCE, type GroupRequest } from "./grading-stages";
import { sizeChoices, type Choice } from "./size-choices";
import { solveByProgram, type Limit, type SolvedCounts } from "./solve-by-program";
import { gradingOfPath } from "./solve-by-size";

/** By how much the deviation of a size may exceed its least, search by search, in tolerances. */
const EXCESSES = [0.5, Number.POSITIVE_INFINITY];
/** Maximum number of choices of one size. */
const MAX_CHOICES = 5000;

/** A grading of a group that no other beats in both deviation and unevenness. */
export interface GroupTradeOff extends TradeOff {
  readonly grading: Grading;
}

export type GroupFrontier =
  | { readonly status: "optimal"; readonly tradeOffs: readonly GroupTradeOff[] }
  | { readonly status: "limit"; readonly tradeOffs: readonly GroupTradeOff[]; readonly limit: Limit }
  | Exclude<SolvedCounts, { readonly grading: unknown }>;

/**
 * All best trade-offs of a group of counts between deviation from targets and unevenness, among the gradings that exceed
 * tolerances least. Slack and a tested grading do not count here.
 *
 * @param bySize false: by the integer program alone, as a check.
 * @returns nearest to the targets first.
 * @see docs/method.md#grading.
 */
export function groupFrontier(
  group: Pick<GroupRequest, "pattern" | "counts" | "measurements">,
  solver: Solver,
  { bySize = true }: { readonly bySize?: boolean } = {},
): GroupFrontier {
  const request = { ...group, slack: 0 };
  const tradeOffs = bySize ? frontierBySize(request) : null;
  return tradeOffs === null ? frontierByProgram(request, solver) : { status: "optimal", tradeOffs };
}

/**
 * As a search of paths from size to size: first through choices near the targets, whose trade-offs shorten the searches that
 * follow, at last through all that exceed tolerances least.
 *
 * @returns null if that would take long, or if there may be no solution.
 */
function frontierBySize(request: GroupRequest): GroupTradeOff[] | null {
  const layers: (readonly Choice[])[] = [];
  for (const size of request.pattern.sizes) {
    const choices = sizeChoices(request, size, MAX_CHOICES);
    const all = choices?.within(choices.maxExcess) ?? null;
    if (all === null) return null;
    layers.push(all);
  }
  let known: FrontierPath[] = [];
  for (const excess of EXCESSES) {
    const near = layers.map((choices) => within(choices, excess));
    const found = frontierPaths(near, request.counts, known);
    if (found === null) return null;
    known = bestTradeOffs([...known, ...found]);
  }
  const tradeOffs = known.flatMap(({ path, ...tradeOff }) => {
    const grading = gradingOfPath(request, path);
    return grading === null ? [] : [{ ...tradeOff, grading }];
  });
  return tradeOffs.length > 0 && tradeOffs.length === known.length ? tradeOffs : null;
}

function within(choices: readonly Choice[], excess: number): readonly Choice[] {
  const least = Math.min(...choices.map(({ deviation }) => deviation));
  return choices.filter(({ deviation }) => deviation <= least + excess);
}

/** With a whole number of unevenness less each time, until there is no grading, or none that exceeds tolerances as little. */
function frontierByProgram(request: GroupRequest, solver: Solver): GroupFrontier {
  const tradeOffs: GroupTradeOff[] = [];
  let leastBeyond = Number.POSITIVE_INFINITY;
  let maxUnevenness: number | undefined;
  for (;;) {
    const solved = solveByProgram({ ...request, maxUnevenness }, solver);
    if (solved.status !== "optimal" && solved.status !== "limit") {
      return tradeOffs.length > 0 && solved.status === "infeasible" ? { status: "optimal", tradeOffs } : solved;
    }
    const { beyond, deviation, unevenness, sum } = costsOfGrading(request, solved.grading);
    if (beyond > leastBeyond + STAGE_TOLERANCE) return { status: "optimal", tradeOffs };
    tradeOffs.push({ deviation, unevenness, sum, grading: solved.grading });
    if (solved.status === "limit") return { status: "limit", tradeOffs, limit: solved.limit };
    if (unevenness < 1) return { status: "optimal", tradeOffs };
    leastBeyond = Math.min(leastBeyond, beyond);
    maxUnevenness = Math.round(unevenness) - 1;
  }
}
