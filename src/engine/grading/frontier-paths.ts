import type { Count } from "../pattern";
import { mayFollow, secondDifference } from "./choice-steps";
import type { Choice } from "./size-choices";
import { bestTradeOffs, beatenBy, type TradeOff } from "./trade-off";
import { unevennessBounds } from "./unevenness-bounds";

export interface FrontierPath extends TradeOff {
  /** A choice a size. */
  readonly path: readonly Choice[];
}

/** A path's beginning, up to its latest choice. */
interface Beginning extends TradeOff {
  readonly choice: Choice;
  /** Of the choice in its size. */
  readonly index: number;
  readonly before: Beginning | null;
}

/** Above this limit the integer program is as fast. */
const MAX_EXTENDED = 20_000_000;

/**
 * Of all paths through layers of choices, those that no other path beats in deviation without being less even, or the other way.
 *
 * Beginnings that end with the same two choices can be continued in the same ways, so of these only the best trade-offs are
 * kept; and none that, continued as well as bounds allow, would be no better than what is known.
 *
 * @param layers choices of each size, in the counts' order of numbers.
 * @param known trade-offs of other paths, by which the search is shortened.
 * @returns paths, nearest to the targets first, without any that a known one beats; null if there are too many to try.
 * @see docs/method.md#grading; multi-objective shortest paths by label setting (Martins 1984, from memory, not checked).
 */
export function frontierPaths(
  layers: readonly (readonly Choice[])[],
  counts: readonly Count[],
  known: readonly TradeOff[],
): FrontierPath[] | null {
  const bounds = unevennessBounds(layers, counts);
  const restDeviation = leastRest(layers);
  const isHopeless = beatenBy(known);
  const leads = mayFollow(counts);
  const kept = layers.map((choices, size) => {
    const others = (restDeviation[0] ?? 0) - leastOf(choices);
    return choices
      .map((choice, index) => ({ choice, index }))
      .filter(({ choice, index }) => !isHopeless(choice.deviation + others, bounds.through(size, index)));
  });
  let beginnings: Beginning[] = (kept[0] ?? []).map(({ choice, index }) => {
    return { choice, index, before: null, unevenness: 0, deviation: choice.deviation, tieBreak: choice.tieBreak };
  });
  let extended = 0;
  for (let size = 1; size < layers.length; size += 1) {
    const rest = restDeviation[size + 1] ?? 0;
    const further: Beginning[] = [];
    for (const toHere of byLatest(beginnings))
      for (const { choice, index } of kept[size] ?? []) {
        const [from] = toHere;
        if (from === undefined || !leads(from.choice, choice)) continue;
        extended += toHere.length;
        if (extended > MAX_EXTENDED) return null;
        const later = bounds.after(size, from.index, index);
        const longer: Beginning[] = [];
        for (const before of toHere) {
          const deviation = before.deviation + choice.deviation;
          const unevenness = before.unevenness + secondDifference(before.before?.choice, before.choice, choice);
          if (isHopeless(deviation + rest, unevenness + later)) continue;
          longer.push({ choice, index, before, deviation, unevenness, tieBreak: before.tieBreak + choice.tieBreak });
        }
        further.push(...(longer.length > 1 ? bestTradeOffs(longer) : longer));
      }
    beginnings = further;
  }
  return bestTradeOffs(beginnings).map(({ deviation, unevenness, tieBreak, ...last }) => ({
    ...{ deviation, unevenness, tieBreak },
    path: pathOf(last),
  }));
}

function byLatest(beginnings: readonly Beginning[]): Iterable<Beginning[]> {
  const groups = new Map<number, Beginning[]>();
  for (const beginning of beginnings) {
    const group = groups.get(beginning.index);
    if (group === undefined) groups.set(beginning.index, [beginning]);
    else group.push(beginning);
  }
  return groups.values();
}

/** By size: the least deviation of it and all that follow. */
function leastRest(layers: readonly (readonly Choice[])[]): number[] {
  const rest = [...layers.map(() => 0), 0];
  for (let size = layers.length - 1; size >= 0; size -= 1)
    rest[size] = (rest[size + 1] ?? 0) + leastOf(layers[size] ?? []);
  return rest;
}

function leastOf(choices: readonly Choice[]): number {
  return choices.reduce((least, { deviation }) => Math.min(least, deviation), Number.POSITIVE_INFINITY);
}

function pathOf({ choice, before }: Pick<Beginning, "choice" | "before">): Choice[] {
  const path = [choice];
  for (let beginning = before; beginning !== null; beginning = beginning.before) path.unshift(beginning.choice);
  return path;
}
