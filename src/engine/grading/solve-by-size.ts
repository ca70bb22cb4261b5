import { gradingRulesOf, meetsRule, type Count, type Grading } from "../pattern";
import { cheapestPaths, ROUNDING_TOLERANCE, type LayeredPaths } from "./cheapest-paths";
import { mayFollow } from "./choice-steps";
import { smoothestPath } from "./smoothest-path";
import type { GroupRequest } from "./grading-stages";
import { sizeChoices, type Choice, type SizeChoices } from "./size-choices";
import { workRulesOf } from "./work-rules-of";

/** Allowed total deviation above the sum of the sizes' own minima: increased step by step, in tolerances. */
const FIRST_EXCESS = 0.25;
const MAX_EXCESS = 2;

/** Maximum number of pairs of choices of neighbouring sizes. */
const MAX_PAIRS = 4_000_000;

/**
 * Solves a group of counts in all sizes at once, as a shortest path from size to size through the choices of each.
 *
 * Exact, because no choice on an optimal path is left out: a path whose total deviation exceeds the sum of the sizes' minima
 * by some amount exceeds the minimum of each size by at most that amount.
 *
 * @returns null if that would take long, or if there may be no solution.
 * @see solveCounts
 */
export function solveBySize(request: GroupRequest): Grading | null {
  const sizes: SizeChoices[] = [];
  for (const size of request.pattern.sizes) {
    const choices = sizeChoices(request, size);
    if (choices === null) return null;
    sizes.push(choices);
  }
  const minDeviation = sizes.reduce((sum, { minDeviation }) => sum + minDeviation, 0);
  let excess = 0;
  while (excess <= MAX_EXCESS) {
    const layers = sizes.flatMap(({ within }) => {
      const choices = within(excess);
      return choices === null ? [] : [choices];
    });
    if (layers.length < sizes.length || pairsOf(layers) > MAX_PAIRS) return null;
    const found = cheapestPaths(feasiblePaths(layers, request.counts), ({ deviation }) => deviation);
    if (found !== null && found.cost - minDeviation <= excess + ROUNDING_TOLERANCE)
      return smoothest(request, found.paths);
    excess = found === null ? Math.max(FIRST_EXCESS, 2 * excess) : found.cost - minDeviation;
  }
  return null;
}

function pairsOf(layers: readonly (readonly Choice[])[]): number {
  return layers.reduce((pairs, choices, layer) => pairs + choices.length * (layers[layer + 1]?.length ?? 0), 0);
}

/** Connects each choice with those of the next size in which no count shrinks that must not. */
function feasiblePaths(layers: readonly (readonly Choice[])[], counts: readonly Count[]): LayeredPaths<Choice> {
  const leads = mayFollow(counts);
  const next = layers.map((choices, layer) =>
    choices.map((choice) => (layers[layer + 1] ?? []).flatMap((onward, to) => (leads(choice, onward) ? [to] : []))),
  );
  return { layers, starts: layers[0]?.map((_, index) => index) ?? [], next };
}

/** Among paths of minimum deviation the closest to the tested grading, then the smoothest, then the fewest stitches; null if it is infeasible. */
function smoothest(request: GroupRequest, paths: LayeredPaths<Choice>): Grading | null {
  const nearest = cheapestPaths(paths, ({ near }) => near);
  const path = nearest && smoothestPath(nearest.paths);
  if (path === null) return null;
  return gradingOfPath(request, path);
}

/** The grading of a choice a size; null if it breaks a rule. */
export function gradingOfPath({ pattern, counts }: GroupRequest, path: readonly Choice[]): Grading | null {
  const bySize = (index: number) =>
    pattern.sizes.map(({ id }, size) => [id, path[size]?.numbers[index] ?? Number.NaN] as const);
  const grading: Grading = Object.fromEntries(counts.map(({ id }, index) => [id, Object.fromEntries(bySize(index))]));
  const graded = { ...pattern, grading };
  const rules = [...gradingRulesOf(pattern, counts), ...workRulesOf(pattern, counts)];
  return rules.every((rule) => meetsRule(graded, rule)) ? grading : null;
}
