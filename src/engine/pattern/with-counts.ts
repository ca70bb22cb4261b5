import { ownValue } from "./own-value";
import type { PatternDocument } from "./pattern-document";

/** A count in one size. */
export interface SizedCount {
  readonly count: string;
  readonly size: string;
  /** Stitches or rows. */
  readonly number: number;
}

/** A pattern with other counts; one of a count or a size that it does not have changes nothing. */
export function withCounts(pattern: PatternDocument, changes: readonly SizedCount[]): PatternDocument {
  const { counts, sizes } = pattern;
  const grading = { ...pattern.grading };
  for (const { count, size, number } of changes)
    if (counts.some(({ id }) => id === count) && sizes.some(({ id }) => id === size))
      grading[count] = { ...ownValue(grading, count), [size]: number };
  return { ...pattern, grading };
}
