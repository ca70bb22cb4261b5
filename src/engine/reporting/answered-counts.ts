import { ownValue, withCounts, type PatternDocument } from "../pattern";

/** How a tester dealt with a correction: followed it from where they were, changed what was made, kept the old number, or does not have the error. */
export const CORRECTION_ANSWERS = ["following", "changed", "kept", "absent"] as const;

export type CorrectionAnswer = (typeof CORRECTION_ANSWERS)[number];

/** A correction of counts, and what a tester answered. */
export interface AnsweredCorrection {
  readonly numbers: readonly {
    readonly count: string;
    readonly size: string;
    readonly was: number;
    readonly becomes: number;
  }[];
  readonly answer: CorrectionAnswer;
  /** Count → the old number that they confirmed to have worked; null where they have not confirmed any. */
  readonly worked: Readonly<Record<string, number>> | null;
}

/**
 * The counts that a tester's answers to corrections tell.
 *
 * @param size the tester's.
 * @param answered in the order in which the corrections were published; of several about one count the last decides.
 * @returns count → the number that they work; null: the number of the revision that they work from. A count that they kept
 *   but have not confirmed is told by nothing.
 * @see docs/method.md#revision.
 */
export function answeredCounts(
  size: string,
  answered: readonly AnsweredCorrection[],
): ReadonlyMap<string, number | null> {
  const told = new Map<string, number | null>();
  for (const { numbers, answer, worked } of answered)
    for (const { count, becomes } of numbers.filter((number) => number.size === size)) {
      if (answer === "absent") told.set(count, told.get(count) ?? null);
      else if (answer !== "kept") told.set(count, becomes);
      else if (worked !== null) told.set(count, ownValue(worked, count) ?? told.get(count) ?? null);
    }
  return told;
}

/** A revision with the counts that one tester works in their size. */
export function patternAsAnswered(
  pattern: PatternDocument,
  size: string,
  told: ReadonlyMap<string, number | null>,
): PatternDocument {
  const changes = [...told].flatMap(([count, number]) => (number === null ? [] : { count, size, number }));
  return withCounts(pattern, changes);
}
