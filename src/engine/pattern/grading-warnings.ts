import { formatPath, type Fault } from "./faults";
import { own } from "./own";
import type { Count, PatternDocument, Size, Tie } from "./pattern-document";

/**
 * Where a grading breaks a repeat, a least value, a tie or the order of sizes. People edit by hand, so these are warnings.
 *
 * @param pattern a parsed pattern; counts without values are passed over.
 * @returns warnings by path, counts first, then ties.
 */
export function gradingWarnings(pattern: PatternDocument): Fault[] {
  const byCount = pattern.counts.flatMap((count) => countWarnings(pattern, count));
  return [
    ...orderWarnings(pattern),
    ...byCount,
    ...pattern.ties.flatMap((tie, index) => tieWarnings(pattern, tie, index)),
  ];
}

function orderWarnings({ sizes, sizeBy }: PatternDocument): Fault[] {
  return sizes.flatMap((size, index) => {
    const before = sizes[index - 1];
    if (before === undefined || (own(size.body, sizeBy) ?? 0) >= (own(before.body, sizeBy) ?? 0)) return [];
    return [
      { path: formatPath(["sizes", index]), says: `${size.label} has a smaller body than ${before.label} before it.` },
    ];
  });
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

function tieWarnings(pattern: PatternDocument, tie: Tie, index: number): Fault[] {
  return pattern.sizes.flatMap((size) => {
    const count = gradedCount(pattern, tie.count, size);
    const parts = tie.equals.map((part) => ({ ...part, value: gradedCount(pattern, part.count, size) }));
    if (count === undefined || parts.some(({ value }) => value === undefined)) return [];
    const sum = parts.reduce((total, { times, value = 0 }) => total + times * value, 0);
    const left = (tie.per ?? 1) * count;
    if (Math.abs(left - sum) <= (tie.within ?? 0)) return [];
    return [
      { path: formatPath(["ties", index]), says: `in ${size.label}, ${left} and ${sum} must add up and do not.` },
    ];
  });
}

function gradedCount(pattern: PatternDocument, count: string, size: Size): number | undefined {
  return own(own(pattern.grading, count), size.id);
}
