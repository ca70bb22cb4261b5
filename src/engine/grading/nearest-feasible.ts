import { workRules } from "../garment";
import { gradedNumber, gradingRulesOf, type PatternDocument, type Rule } from "../pattern";

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

/** What a rule asks of its numbers, whatever it comes from. */
type Asks = Pick<Rule, "numbers" | "requires">;

/** Far more than a typed number is ever off. */
const MOST_TRIED = 10_000;

const ALL: Range = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
const NONE: Range = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };

interface GradedCell {
  readonly count: string;
  /** By index. */
  readonly size: number;
}

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
  { count, size: id, typed }: { readonly count: string; readonly size: string; readonly typed: number },
): NearestFeasible {
  const size = pattern.sizes.findIndex((other) => other.id === id);
  if (!pattern.counts.some((other) => other.id === count)) return { below: null, above: null };
  const cell = { count, size };
  const rules = [...gradingRulesOf(pattern), ...workRules(pattern)].filter(
    (rule) => rule.kind !== "locked" && isOf(rule, cell),
  );
  const ranges = rules.map((rule) => rangeOf(pattern, rule, cell));
  const low = Math.max(...ranges.map((range) => range.low));
  const high = Math.min(...ranges.map((range) => range.high));
  const multiples = rules.flatMap((rule) => multipleFor(pattern, rule, cell) ?? []);
  const below = nextOf(multiples, Math.min(typed, high), -1);
  const above = nextOf(multiples, Math.max(typed, low), 1);
  return {
    below: below !== null && below >= low ? below : null,
    above: above !== null && above <= high ? above : null,
  };
}

function isOf({ numbers }: Asks, cell: GradedCell): boolean {
  return numbers.some(({ count, size }) => count === cell.count && size === cell.size);
}

/** weight × the number leaves that remainder when it is divided. */
interface Multiple {
  readonly weight: number;
  readonly multipleOf: number;
  readonly remainder: number;
}

/** What a rule that asks for a multiple leaves for one number, the others as they are; null where it is no such rule. */
function multipleFor(pattern: PatternDocument, { numbers, requires }: Asks, cell: GradedCell): Multiple | null {
  if (!("multipleOf" in requires)) return null;
  let [weight, rest] = [0, 0];
  for (const number of numbers) {
    const value = gradedNumber(pattern, number.count, number.size);
    if (number.count === cell.count && number.size === cell.size) weight += number.weight;
    else if (value === undefined) return null;
    else rest += number.weight * value;
  }
  return { weight, multipleOf: requires.multipleOf, remainder: requires.remainder - rest };
}

/** The nearest number from one on, upward or downward, that meets all; null if none does. */
function nextOf(multiples: readonly Multiple[], from: number, direction: 1 | -1): number | null {
  // What meets all comes again after the product of all, if it comes at all.
  const period = multiples.reduce((product, { multipleOf }) => product * multipleOf, 1);
  const meets = (number: number) =>
    multiples.every(({ weight, multipleOf, remainder }) => (weight * number - remainder) % multipleOf === 0);
  for (let off = 0; off < Math.min(period, MOST_TRIED); off += 1)
    if (meets(from + direction * off)) return from + direction * off;
  return null;
}

/** What a rule leaves for one number: its sum is slope × that number + the rest. */
function rangeOf(pattern: PatternDocument, { numbers, requires }: Asks, cell: GradedCell): Range {
  if ("multipleOf" in requires) return ALL;
  let [slope, rest] = [0, 0];
  for (const { count, size, weight } of numbers) {
    const number = gradedNumber(pattern, count, size);
    if (count === cell.count && size === cell.size) slope += weight;
    else if (number === undefined) return ALL;
    else rest += weight * number;
  }
  const { min, max } = requires;
  if (slope === 0) return rest >= min && rest <= max ? ALL : NONE;
  const ends = [(min - rest) / slope, (max - rest) / slope];
  return { low: Math.ceil(Math.min(...ends)), high: Math.floor(Math.max(...ends)) };
}
