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
  const { multipleOf, remainder } = stepOf(rules);
  const below = Math.floor((Math.min(typed, high) - remainder) / multipleOf) * multipleOf + remainder;
  const above = Math.ceil((Math.max(typed, low) - remainder) / multipleOf) * multipleOf + remainder;
  return { below: below >= low ? below : null, above: above <= high ? above : null };
}

function isOf({ numbers }: Rule, cell: GradedCell): boolean {
  return numbers.some(({ count, size }) => count === cell.count && size === cell.size);
}

function stepOf(rules: readonly Rule[]): { readonly multipleOf: number; readonly remainder: number } {
  const [step] = rules.flatMap(({ requires }) => ("multipleOf" in requires ? [requires] : []));
  return step ?? { multipleOf: 1, remainder: 0 };
}

/** What a rule leaves for one number: its sum is slope × that number + the rest. */
function rangeOf(pattern: PatternDocument, { numbers, requires }: Rule, cell: GradedCell): Range {
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
