import { formatPath, type Fault } from "./faults";
import type { PatternDocument, Size, Tie } from "./pattern-document";
import { gradedNumber, gradingRulesOf, meetsRule, type CountRule, type Rule } from "./rules";
import { sizeOrderFaults } from "./size-order";

/**
 * Where a grading breaks a repeat, a minimum value, a tie or the order of sizes. People edit by hand, so these are warnings.
 *
 * @param pattern a parsed pattern; counts without values are skipped.
 * @returns warnings by path, counts first, then ties.
 */
export function gradingWarnings(pattern: PatternDocument): Fault[] {
  const broken = brokenRules(pattern).filter(({ kind }) => kind !== "locked");
  return [
    ...sizeOrderFaults(pattern),
    ...broken.flatMap((rule) => (rule.kind === "tie" ? [] : [countWarning(pattern, rule)])),
    ...tiesAmong(pattern, broken).map(tieWarning),
  ];
}

function countWarning(pattern: PatternDocument, rule: CountRule): Fault {
  const { count, size } = rule;
  const path = formatPath(["grading", count.id, pattern.sizes[size]?.id ?? ""]);
  return {
    path,
    says: brokenText(rule, gradedNumber(pattern, count.id, size), gradedNumber(pattern, count.id, size - 1)),
  };
}

function brokenText({ kind, count }: CountRule, value = Number.NaN, smaller = Number.NaN): string {
  const { repeat = { of: 1, plus: 0 }, least = 1 } = count;
  switch (kind) {
    case "repeat":
      return `${value} is not a multiple of ${repeat.of}${repeat.plus > 0 ? ` plus ${repeat.plus}` : ""}.`;
    case "least":
      return `${value} is below the least value, ${least}.`;
    case "order":
      return `${value} is less than the ${smaller} of the next smaller size.`;
    case "locked":
      return `${value} is not the number at which it is locked.`;
  }
}

/** A tie that is not met in a size. */
export interface BrokenTie {
  /** Index in the pattern's list of ties. */
  readonly tie: number;
  readonly size: Size;
  readonly left: number;
  readonly right: number;
}

function tieWarning({ tie, size, left, right }: BrokenTie): Fault {
  return { path: formatPath(["ties", tie]), says: `in ${size.label}, ${left} and ${right} must add up and do not.` };
}

/** Ties whose sides differ by more than they may; those with missing numbers are skipped. */
export function brokenTies(pattern: PatternDocument): BrokenTie[] {
  return tiesAmong(pattern, brokenRules(pattern));
}

const known = new WeakMap<PatternDocument, readonly Rule[]>();

function brokenRules(pattern: PatternDocument): readonly Rule[] {
  const before = known.get(pattern);
  if (before !== undefined) return before;
  const broken = gradingRulesOf(pattern).filter((rule) => !meetsRule(pattern, rule));
  known.set(pattern, broken);
  return broken;
}

function tiesAmong(pattern: PatternDocument, broken: readonly Rule[]): BrokenTie[] {
  return broken.flatMap((rule) => {
    const size = pattern.sizes[rule.size];
    const sides = size && rule.kind === "tie" ? tieSides(pattern, rule.tie, size) : null;
    return size && sides && rule.kind === "tie" ? [{ tie: rule.tieIndex, size, ...sides }] : [];
  });
}

/** Both sides of a tie in a size, null if a number is missing. */
export function tieSides(
  pattern: PatternDocument,
  tie: Tie,
  size: Size,
): { readonly left: number; readonly right: number } | null {
  const index = pattern.sizes.findIndex(({ id }) => id === size.id);
  const count = gradedNumber(pattern, tie.count, index);
  if (count === undefined) return null;
  let right = 0;
  for (const part of tie.equals) {
    const value = gradedNumber(pattern, part.count, index);
    if (value === undefined) return null;
    right += part.times * value;
  }
  return { left: (tie.per ?? 1) * count, right };
}
