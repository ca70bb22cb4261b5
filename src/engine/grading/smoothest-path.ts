import type { LayeredPaths } from "./cheapest-paths";
import { secondDifference } from "./choice-steps";
import type { Choice } from "./size-choices";

/** The best path from a choice to the last size. */
interface Tail {
  readonly choice: Choice;
  readonly then: Tail | null;
  readonly unevenness: number;
  readonly tieBreak: number;
}

/** Above this limit the solver is as fast. */
const MAX_TRIED = 10_000_000;

/**
 * The path with the smallest sum of absolute second differences; among equals the one whose untargeted counts stay nearest to their numbers, then the one with the fewest stitches.
 *
 * @param paths without dead ends.
 * @returns the choice of each size; null if there are too many combinations.
 */
export function smoothestPath(paths: LayeredPaths<Choice>): Choice[] | null {
  if (tripleCount(paths) > MAX_TRIED) return null;
  const restOf = memoisedTail(paths);
  let best: Tail | null = null;
  for (const start of paths.starts) {
    const rest = restOf({ layer: 0, before: -1, index: start });
    if (rest && (best === null || isLess(rest, best))) best = rest;
  }
  const path: Choice[] = [];
  for (let rest = best; rest !== null; rest = rest.then) path.push(rest.choice);
  return path;
}

/** Number of partial paths through three consecutive sizes. */
function tripleCount({ layers, next }: LayeredPaths<Choice>): number {
  return layers.reduce((bends, _, layer) => {
    const onward = next[layer + 1] ?? [];
    return bends + (next[layer] ?? []).flat().reduce((sum, to) => sum + (onward[to]?.length ?? 0), 0);
  }, 0);
}

/** The best tail from a node, memoised by the node and its predecessor, because the second difference depends on both. */
function memoisedTail({ layers, next }: LayeredPaths<Choice>) {
  const known = layers.map(() => new Map<number, Tail>());
  const restOf = ({ layer, before, index }: { layer: number; before: number; index: number }): Tail | null => {
    const key = before * (layers[layer]?.length ?? 0) + index;
    const choice = layers[layer]?.[index];
    if (choice === undefined) return null;
    const cached = known[layer]?.get(key);
    if (cached !== undefined) return cached;
    let best: Tail = { choice, then: null, unevenness: 0, tieBreak: choice.tieBreak };
    for (const to of next[layer]?.[index] ?? []) {
      const then = restOf({ layer: layer + 1, before: index, index: to });
      if (then === null) continue;
      const unevenness = then.unevenness + secondDifference(layers[layer - 1]?.[before], choice, then.choice);
      const rest = { choice, then, unevenness, tieBreak: then.tieBreak + choice.tieBreak };
      if (best.then === null || isLess(rest, best)) best = rest;
    }
    known[layer]?.set(key, best);
    return best;
  };
  return restOf;
}

function isLess(one: Tail, other: Tail): boolean {
  return one.unevenness < other.unevenness || (one.unevenness === other.unevenness && one.tieBreak < other.tieBreak);
}
