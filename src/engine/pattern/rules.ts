import { ownValue } from "./own-value";
import type { Count, PatternDocument, Tie } from "./pattern-document";

/** A number of a grading, of a count in a size (by index), times a weight. */
export interface WeightedNumber {
  readonly count: string;
  readonly size: number;
  readonly weight: number;
}

/** What a rule asks of the weighted sum of some numbers: bounds, or to leave a remainder when it is divided. */
export type Requirement =
  { readonly min: number; readonly max: number } | { readonly multipleOf: number; readonly remainder: number };

interface RuleBase {
  /** Index of the size that it is a rule of. */
  readonly size: number;
  readonly numbers: readonly WeightedNumber[];
  readonly requires: Requirement;
}

export type CountRule = RuleBase & { readonly kind: "least" | "repeat" | "locked" | "order"; readonly count: Count };
/** @property tieIndex in the pattern's list of ties. */
type TieRule = RuleBase & { readonly kind: "tie"; readonly tie: Tie; readonly tieIndex: number };

/** A rule that a grading must meet. Warnings, the nearest number that would do, and the integer program are all made from these. */
export type Rule = CountRule | TieRule;

/**
 * The rules of a pattern's grading, those of counts first, in the order of the counts and of the sizes.
 *
 * @param counts the rules of these alone, and the ties of which one of them is the sum; all by default.
 * @see docs/method.md#grading
 */
export function gradingRulesOf(pattern: PatternDocument, counts: readonly Count[] = pattern.counts): Rule[] {
  return [
    ...counts.flatMap((count) => pattern.sizes.flatMap((_, size) => countRules(pattern, count, size))),
    ...tieRules(pattern, new Set(counts.map(({ id }) => id))),
  ];
}

function countRules({ sizes }: PatternDocument, count: Count, size: number): CountRule[] {
  const { id, repeat, least = 1, mayShrink = false } = count;
  const numbers = [{ count: id, size, weight: 1 }];
  const locked = ownValue(count.locked, sizes[size]?.id ?? "");
  const rules: CountRule[] = [];
  if (repeat) {
    const requires = { multipleOf: repeat.of, remainder: repeat.plus };
    rules.push({ kind: "repeat", count, size, numbers, requires });
  }
  rules.push({ kind: "least", count, size, numbers, requires: { min: least, max: Infinity } });
  if (locked !== undefined)
    rules.push({ kind: "locked", count, size, numbers, requires: { min: locked, max: locked } });
  if (size > 0 && !mayShrink) {
    const growth = [...numbers, { count: id, size: size - 1, weight: -1 }];
    rules.push({ kind: "order", count, size, numbers: growth, requires: { min: 0, max: Infinity } });
  }
  return rules;
}

function tieRules({ ties, sizes }: PatternDocument, counts: ReadonlySet<string>): TieRule[] {
  return ties.flatMap((tie, tieIndex) => {
    if (!counts.has(tie.count)) return [];
    const within = tie.within ?? 0;
    return sizes.map((_, size): TieRule => {
      const numbers = [
        { count: tie.count, size, weight: tie.per ?? 1 },
        ...tie.equals.map(({ count, times }) => ({ count, size, weight: -times })),
      ];
      return { kind: "tie", tie, tieIndex, size, numbers, requires: { min: -within, max: within } };
    });
  });
}

/** The number of a count in a size (by index), if there is one. */
export function gradedNumber({ grading, sizes }: PatternDocument, count: string, size: number): number | undefined {
  const id = sizes[size]?.id;
  return id === undefined ? undefined : ownValue(ownValue(grading, count), id);
}

/** Whether a pattern's numbers meet a rule; a rule with a missing number asks nothing. */
export function meetsRule(
  pattern: PatternDocument,
  { numbers, requires }: Pick<Rule, "numbers" | "requires">,
): boolean {
  let sum = 0;
  for (const { count, size, weight } of numbers) {
    const number = gradedNumber(pattern, count, size);
    if (number === undefined) return true;
    sum += weight * number;
  }
  return "multipleOf" in requires
    ? (sum - requires.remainder) % requires.multipleOf === 0
    : sum >= requires.min && sum <= requires.max;
}

/** The graded value of every count in one size, by count; counts without a value are left out. */
export function gradedCounts({ counts, grading }: PatternDocument, size: string): Record<string, number> {
  return Object.fromEntries(
    counts.flatMap(({ id }) => {
      const value = ownValue(ownValue(grading, id), size);
      return value === undefined ? [] : [[id, value]];
    }),
  );
}
