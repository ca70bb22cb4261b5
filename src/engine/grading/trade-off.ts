import { ROUNDING_TOLERANCE } from "./cheapest-paths";

/** A trade-off between being close to the targets and even steps. */
export interface TradeOff {
  /** In tolerances. */
  readonly deviation: number;
  /** A whole number of stitches and rows. */
  readonly unevenness: number;
  /** Decides among equals: how far untargeted counts are from their numbers, then the stitches. */
  readonly tieBreak: number;
}

/** Of trade-offs those that no other beats, nearest to the targets first, and so the most even last. */
export function bestTradeOffs<Item extends TradeOff>(items: readonly Item[]): Item[] {
  const sorted = items.toSorted(
    (one, other) =>
      one.unevenness - other.unevenness || one.deviation - other.deviation || one.tieBreak - other.tieBreak,
  );
  const best: Item[] = [];
  for (const item of sorted) {
    const last = best.at(-1);
    if (last === undefined || item.deviation < last.deviation - ROUNDING_TOLERANCE) best.push(item);
    else if (isSame(item, last) && item.tieBreak < last.tieBreak) best.splice(-1, 1, item);
  }
  return best.toReversed();
}

function isSame(one: TradeOff, other: TradeOff): boolean {
  return one.unevenness === other.unevenness && Math.abs(one.deviation - other.deviation) <= ROUNDING_TOLERANCE;
}

/**
 * Whether trade-offs are known that are as good in deviation and unevenness, and better in one of them.
 *
 * @returns to be asked with whole unevenness, or an infinite one, which is always beaten.
 */
export function beatenBy(known: readonly TradeOff[]): (deviation: number, unevenness: number) => boolean {
  const most = known.reduce((sofar, { unevenness }) => Math.max(sofar, unevenness), -1);
  /** The least deviation of those known that are at most so uneven. */
  const least = new Float64Array(most + 2).fill(Number.POSITIVE_INFINITY);
  for (const { deviation, unevenness } of known)
    for (let from = unevenness; from < least.length; from += 1)
      least[from] = Math.min(least[from] ?? Number.POSITIVE_INFINITY, deviation);
  return (deviation, unevenness) => {
    if (unevenness === Number.POSITIVE_INFINITY) return true;
    const asEven = least[Math.min(unevenness, most + 1)] ?? Number.POSITIVE_INFINITY;
    const moreEven =
      unevenness === 0
        ? Number.POSITIVE_INFINITY
        : (least[Math.min(unevenness - 1, most + 1)] ?? Number.POSITIVE_INFINITY);
    return deviation > asEven + ROUNDING_TOLERANCE || deviation >= moreEven - ROUNDING_TOLERANCE;
  };
}
