import type { Solver } from "../integer-program";
import type { Grading } from "../pattern";
import { frontierPaths, type FrontierPath } from "./frontier-paths";
import { costsOfGrading, STAGE_TOLERANCE, tieBreakOf, type GroupRequest } from "./grading-stages";
import { sizeChoices, type Choice } from "./size-choices";
import { solveByProgram, solveStages, type Limit, type SolvedCounts, type SolvedStages } from "./solve-by-program";
import { gradingOfPath } from "./solve-by-size";
import { bestTradeOffs, type TradeOff } from "./trade-off";

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

type Group = Pick<GroupRequest, "pattern" | "counts" | "measurements">;

/**
 * All best trade-offs of a group of counts between deviation from targets and unevenness, among the gradings that exceed
 * tolerances least. Slack and a tested grading do not count here.
 *
 * @returns nearest to the targets first.
 * @see docs/method.md#grading.
 */
export function groupFrontier(group: Group, solver: Solver): GroupFrontier {
  const tradeOffs = frontierBySize({ ...group, slack: 0 });
  return tradeOffs === null ? frontierByProgram(group, solver) : { status: "optimal", tradeOffs };
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

/** The same by the integer program: with one less of unevenness each time, until there is no grading, or none that exceeds tolerances as little. */
export function frontierByProgram(group: Group, solver: Solver): GroupFrontier {
  const request = { ...group, slack: 0 };
  const tradeOffs: GroupTradeOff[] = [];
  const nearest = solveByProgram(request, solver);
  if (!("grading" in nearest)) return nearest;
  let solved: SolvedStages = nearest;
  let leastBeyond = Number.POSITIVE_INFINITY;
  while ("grading" in solved) {
    const { grading } = solved;
    const { beyond, deviation, unevenness, ...last } = costsOfGrading(request, grading);
    if (beyond > leastBeyond + STAGE_TOLERANCE) break;
    leastBeyond = Math.min(leastBeyond, beyond);
    tradeOffs.push({ deviation, unevenness, tieBreak: tieBreakOf(last), grading });
    if (solved.status === "limit") return { status: "limit", tradeOffs, limit: solved.limit };
    if (unevenness < 1) break;
    solved = solveStages(request, solver, Math.round(unevenness) - 1);
  }
  return solved.status === "unproven" ? solved : { status: "optimal", tradeOffs };
}
