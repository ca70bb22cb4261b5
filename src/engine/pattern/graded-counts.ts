import { ownValue } from "./own-value";
import type { PatternDocument } from "./pattern-document";

/** The graded value of every count in one size, by count; counts without a value are left out. */
export function gradedCounts({ counts, grading }: PatternDocument, size: string): Record<string, number> {
  return Object.fromEntries(
    counts.flatMap(({ id }) => {
      const value = ownValue(ownValue(grading, id), size);
      return value === undefined ? [] : [[id, value]];
    }),
  );
}
