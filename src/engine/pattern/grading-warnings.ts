import { formatPath, type Fault } from "./faults";
import { ownValue } from "./own-value";
import type { Count, PatternDocument, Size, Tie } from "./pattern-document";
import { sizeOrderFaults } from "./size-order-faults";

/**
 * Where a grading breaks a repeat, a minimum value, a tie or the order of sizes. People edit by hand, so these are warnings.
 *
 * @param pattern a parsed pattern; counts without values are skipped.
 * @returns warnings by path, counts first, then ties.
 */
export function gradingWarnings(pattern: PatternDocument): Fault[] {
  const byCount = pattern.counts.flatMap((count) => countWarnings(pattern, count));
  return [...sizeOrderFaults(pattern), ...byCount, ...tieWarnings(pattern)];
}

function countWarnings(pattern: PatternDocument, count: Count): Fault[] {
  return pattern.sizes.flatMap((size, index) => {
    const value = gradedCount(pattern, count.id, size);
    if (value === undefined) return [];
    const before = pattern.sizes[index - 1];
    const smaller = before === undefined ? undefined : gradedCount(pattern, count.id, before);
    return brokenRules(count, value, smaller).map((says) => ({
      path: formatPath(["grading", count.id, size.id]),
      says,
    }));
  });
}

function brokenRules(count: Count, value: number, smaller: number | undefined): string[] {
  const broken: string[] = [];
  const { repeat, least = 1 } = count;
  if (repeat && (value - repeat.plus) % repeat.of !== 0) {
    broken.push(`${value} is not a multiple of ${repeat.of}${repeat.plus > 0 ? ` + ${repeat.plus}` : ""}.`);
  }
  if (value < least) broken.push(`${value} is below the least value, ${least}.`);
  if (smaller !== undefined && value < smaller && !count.mayShrink) {
    broken.push(`${value} is less than the ${smaller} of the next smaller size.`);
  }
  return broken;
}

function tieWarnings(pattern: PatternDocument): Fault[] {
  return brokenTies(pattern).map(({ tie, size, left, right }) => ({
    path: formatPath(["ties", tie]),
    says: `in ${size.label}, ${left} and ${right} must add up and do not.`,
  }));
}

/** A tie that is not met in a size. */
export interface BrokenTie {
  /** Index in the pattern's list of ties. */
  readonly tie: number;
  readonly size: Size;
  readonly left: number;
  readonly right: number;
}

/** Ties whose sides differ by more than they may; those with missing numbers are skipped. */
export function brokenTies(pattern: PatternDocument): BrokenTie[] {
  return pattern.ties.flatMap((tie, index) =>
    pattern.sizes.flatMap((size) => {
      const sides = tieSides(pattern, tie, size);
      if (sides === null || Math.abs(sides.left - sides.right) <= (tie.within ?? 0)) return [];
      return [{ tie: index, size, ...sides }];
    }),
  );
}

/** Both sides of a tie in a size, null if a number is missing. */
export function tieSides(
  pattern: PatternDocument,
  tie: Tie,
  size: Size,
): { readonly left: number; readonly right: number } | null {
  const count = gradedCount(pattern, tie.count, size);
  if (count === undefined) return null;
  let right = 0;
  for (const part of tie.equals) {
    const value = gradedCount(pattern, part.count, size);
    if (value === undefined) return null;
    right += part.times * value;
  }
  return { left: (tie.per ?? 1) * count, right };
}

function gradedCount(pattern: PatternDocument, count: string, size: Size): number | undefined {
  return ownValue(ownValue(pattern.grading, count), size.id);
}
