import { ownValue } from "./own-value";
import type { PatternDocument } from "./pattern-document";

/** Every count of one size as it is graded, by count; a count without a value there is left out. */
export function gradedCounts({ counts, grading }: PatternDocument, size: string): Record<string, number> {
  return Object.fromEntries(
    counts.flatMap(({ id }) => {
      const value = ownValue(ownValue(grading, id), size);
      return value === undefined ? [] : [[id, value]];
    }),
  );
}
