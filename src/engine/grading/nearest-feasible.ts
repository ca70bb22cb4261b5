import { ownValue, type Count, type PatternDocument } from "../pattern";

/** The nearest numbers below and above that meet a count's rules in a size; null if there is none. */
export interface NearestFeasible {
  readonly below: number | null;
  readonly above: number | null;
}

/** Whole numbers from `low` to `high`, inclusive; empty if `low` is larger. */
interface Range {
  readonly low: number;
  readonly high: number;
}

const NONE: Range = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };

/**
 * Numbers near a typed one that meet the repeat, the minimum value, the order of sizes and every tie of a count, with all other
 * numbers of the grading unchanged.
 *
 * @param pattern with a grading; missing numbers impose no rule.
 * @param typed the number that was typed, whole.
 * @returns `below` and `above` are the typed number itself if it meets all rules.
 */
export function nearestFeasible(
  pattern: PatternDocument,
  { count: id, size, typed }: { readonly count: string; readonly size: string; readonly typed: number },
): NearestFeasible {
  const count = pattern.counts.find((other) => other.id === id);
  if (count === undefined) return { below: null, above: null };
  const { low, high } = feasibleRange(pattern, count, size);
  const { of, plus } = count.repeat ?? { of: 1, plus: 0 };
  const below = Math.floor((Math.min(typed, high) - plus) / of) * of + plus;
  const above = Math.ceil((Math.max(typed, low) - plus) / of) * of + plus;
  return { below: below >= low ? below : null, above: above <= high ? above : null };
}

/** Range of a count by its minimum value, the order of sizes and its ties. */
function feasibleRange(pattern: PatternDocument, { id, least = 1, mayShrink = false }: Count, size: string): Range {
  const index = pattern.sizes.findIndex((other) => other.id === size);
  const numberIn = (count: string, sizeAt: number) => {
    const of = pattern.sizes[sizeAt]?.id;
    return of === undefined ? undefined : ownValue(ownValue(pattern.grading, count), of);
  };
  const smaller = mayShrink ? undefined : numberIn(id, index - 1);
  const larger = mayShrink ? undefined : numberIn(id, index + 1);
  const ranges = [
    { low: least, high: Number.POSITIVE_INFINITY },
    { low: smaller ?? least, high: larger ?? Number.POSITIVE_INFINITY },
    ...tieRanges(pattern, id, (count) => numberIn(count, index)),
  ];
  return {
    low: Math.max(...ranges.map(({ low }) => low)),
    high: Math.min(...ranges.map(({ high }) => high)),
  };
}

/** Each tie of a count is slope × its number + the rest, which must be at most `within` from 0. */
function tieRanges(pattern: PatternDocument, id: string, numberOf: (count: string) => number | undefined): Range[] {
  return pattern.ties.flatMap((tie) => {
    const parts = [
      { count: tie.count, weight: tie.per ?? 1 },
      ...tie.equals.map(({ count, times }) => ({ count, weight: -times })),
    ];
    if (!parts.some(({ count }) => count === id)) return [];
    let [slope, rest] = [0, 0];
    for (const { count, weight } of parts) {
      const number = numberOf(count);
      if (count === id) slope += weight;
      else if (number === undefined) return [];
      else rest += weight * number;
    }
    return [slopeRange({ slope, rest, within: tie.within ?? 0 })];
  });
}

function slopeRange({ slope, rest, within }: { slope: number; rest: number; within: number }): Range {
  if (slope === 0)
    return Math.abs(rest) <= within ? { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY } : NONE;
  const ends = [(-within - rest) / slope, (within - rest) / slope];
  return { low: Math.ceil(Math.min(...ends)), high: Math.floor(Math.max(...ends)) };
}
