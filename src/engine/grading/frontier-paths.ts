import type { Count } from "../pattern";
import type { Choice } from "./size-choices";
import { bestTradeOffs, beatenBy, type TradeOff } from "./trade-off";
import { unevennessBounds } from "./unevenness-bounds";

export interface FrontierPath extends TradeOff {
  /** A choice a size. */
  readonly path: readonly Choice[];
}

/** A path's beginning, up to its latest choice. */
interface Beginning extends TradeOff {
  /** Of the latest choice in its size. */
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
  const kept = layers.map((choices, size) => {
    const others = (restDeviation[0] ?? 0) - leastOf(choices);
    return choices.flatMap(({ deviation }, index) =>
      isHopeless(deviation + others, bounds.through(size, index)) ? [] : [index],
    );
  });
  let beginnings: Beginning[] = (kept[0] ?? []).map((index) => {
    const { deviation = 0, sum = 0 } = layers[0]?.[index] ?? {};
    return { index, before: null, unevenness: 0, deviation, sum };
  });
  let extended = 0;
  for (let size = 1; size < layers.length; size += 1) {
    const rest = restDeviation[size + 1] ?? 0;
    const steps = stepsTo(layers, size, counts);
    const further: Beginning[] = [];
    for (const toHere of byLatest(beginnings))
      for (const index of kept[size] ?? []) {
        const from = toHere[0]?.index ?? -1;
        if (!steps.leads(from, index)) continue;
        extended += toHere.length;
        if (extended > MAX_EXTENDED) return null;
        const later = bounds.after(size, from, index);
        const { deviation = 0, sum = 0 } = layers[size]?.[index] ?? {};
        const longer: Beginning[] = [];
        for (const before of toHere) {
          const soFar = before.deviation + deviation;
          const unevenness = before.unevenness + steps.bend(before.before?.index, from, index);
          if (isHopeless(soFar + rest, unevenness + later)) continue;
          longer.push({ index, before, deviation: soFar, unevenness, sum: before.sum + sum });
        }
        further.push(...(longer.length > 1 ? bestTradeOffs(longer) : longer));
      }
    beginnings = further;
  }
  return bestTradeOffs(beginnings).map(({ deviation, unevenness, sum, ...last }) => ({
    ...{ deviation, unevenness, sum },
    path: pathOf(last).flatMap((index, size) => layers[size]?.[index] ?? []),
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

/** Steps from the size before to this one; choices by index. */
interface Steps {
  /** True if no count shrinks that must not. */
  readonly leads: (from: number, to: number) => boolean;
  /** Σ over the counts of the absolute second difference at `from`; 0 where nothing is before it. */
  readonly bend: (before: number | undefined, from: number, to: number) => number;
}

function stepsTo(layers: readonly (readonly Choice[])[], size: number, counts: readonly Count[]): Steps {
  const many = counts.length;
  const flat = (choices: readonly Choice[] = []) => Float64Array.from(choices.flatMap(({ numbers }) => [...numbers]));
  const [first, second, third] = [flat(layers[size - 2]), flat(layers[size - 1]), flat(layers[size])];
  const mayShrink = counts.map((count) => count.mayShrink ?? false);
  return {
    leads: (from, to) => {
      for (let count = 0; count < many; count += 1)
        if (!mayShrink[count] && (third[to * many + count] ?? 0) < (second[from * many + count] ?? 0)) return false;
      return true;
    },
    bend: (before, from, to) => {
      if (before === undefined) return 0;
      let sum = 0;
      for (let count = 0; count < many; count += 1)
        sum += Math.abs(
          (third[to * many + count] ?? 0) -
            2 * (second[from * many + count] ?? 0) +
            (first[before * many + count] ?? 0),
        );
      return sum;
    },
  };
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

function pathOf({ index, before }: Pick<Beginning, "index" | "before">): number[] {
  const path = [index];
  for (let beginning = before; beginning !== null; beginning = beginning.before) path.unshift(beginning.index);
  return path;
}
