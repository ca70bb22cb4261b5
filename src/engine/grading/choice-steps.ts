import type { Count } from "../pattern";
import type { Choice } from "./size-choices";

/** Whether one choice may follow another in the next size: no count shrinks that must not. */
export function mayFollow(counts: readonly Count[]): (from: Choice, to: Choice) => boolean {
  const growing = counts.flatMap(({ mayShrink = false }, index) => (mayShrink ? [] : [index]));
  return (from, to) => growing.every((index) => (to.numbers[index] ?? 0) >= (from.numbers[index] ?? 0));
}

/** Σ over the counts of the absolute second difference; 0 before the third size. */
export function secondDifference(first: Choice | undefined, second: Choice, third: Choice): number {
  if (first === undefined) return 0;
  let sum = 0;
  for (let index = 0; index < second.numbers.length; index += 1)
    sum += Math.abs((third.numbers[index] ?? 0) - 2 * (second.numbers[index] ?? 0) + (first.numbers[index] ?? 0));
  return sum;
}
