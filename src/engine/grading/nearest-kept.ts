import { own, type Count, type PatternDocument } from "../pattern";

/** The nearest numbers below and above that keep a count's rules in a size; null where none does. */
export interface NearestKept {
  readonly below: number | null;
  readonly above: number | null;
}

/** A tie's sum moves with its count at least this slowly: the search goes no further than a tie may reach. */
const FURTHEST = 2000;

/**
 * Numbers near a typed one that keep the repeat, the least value, the order of sizes and every tie of a count, all other
 * numbers of the grading as they stand.
 *
 * @param pattern with a grading; numbers that it lacks hold nobody to anything.
 * @param typed the number that was typed, whole.
 * @returns `below` and `above` are the typed number itself where it keeps them all.
 */
export function nearestKept(
  pattern: PatternDocument,
  { count, size, typed }: { readonly count: string; readonly size: string; readonly typed: number },
): NearestKept {
  const rules = pattern.counts.find(({ id }) => id === count);
  if (rules === undefined) return { below: null, above: null };
  const keeps = keeper(pattern, rules, size);
  const search = (step: 1 | -1) => {
    for (let away = 0; away <= FURTHEST; away += 1) {
      const number = typed + step * away;
      if (number < 0) return null;
      if (keeps(number)) return number;
    }
    return null;
  };
  return { below: search(-1), above: search(1) };
}

function keeper(pattern: PatternDocument, count: Count, size: string): (number: number) => boolean {
  const at = pattern.sizes.findIndex(({ id }) => id === size);
  const numberIn = (id: string, sizeAt: number) => {
    const of = pattern.sizes[sizeAt]?.id;
    return of === undefined ? undefined : own(own(pattern.grading, id), of);
  };
  const { repeat, least = 1, mayShrink = false } = count;
  const smaller = mayShrink ? undefined : numberIn(count.id, at - 1);
  const larger = mayShrink ? undefined : numberIn(count.id, at + 1);
  const ties = tieBalances(pattern, count.id, (id) => numberIn(id, at));
  return (number) =>
    number >= Math.max(least, smaller ?? least) &&
    number <= (larger ?? Number.POSITIVE_INFINITY) &&
    (repeat === undefined || (number - repeat.plus) % repeat.of === 0) &&
    ties.every(({ slope, rest, within }) => Math.abs(slope * number + rest) <= within);
}

/** Each tie that a count stands in as slope × its number + the rest, which must be at most `within` from 0. */
function tieBalances(pattern: PatternDocument, count: string, numberOf: (id: string) => number | undefined) {
  return pattern.ties.flatMap((tie) => {
    const parts = [
      { id: tie.count, weight: tie.per ?? 1 },
      ...tie.equals.map((part) => ({ id: part.count, weight: -part.times })),
    ];
    if (!parts.some(({ id }) => id === count)) return [];
    const others = parts.filter(({ id }) => id !== count).map(({ id, weight }) => ({ weight, number: numberOf(id) }));
    if (others.some(({ number }) => number === undefined)) return [];
    const slope = parts.reduce((sum, { id, weight }) => (id === count ? sum + weight : sum), 0);
    const rest = others.reduce((sum, { weight, number = 0 }) => sum + weight * number, 0);
    return [{ slope, rest, within: tie.within ?? 0 }];
  });
}
