import { findBlock, type SizeChange } from "@/engine/instructions";
import { ownValue, type PatternDocument } from "@/engine/pattern";
import { answeredCounts, patternAsAnswered } from "@/engine/reporting";
import type { NumberChange } from "@/features/calls/correction-schema";
import { placeKey } from "../questions/place-key";
import type { TesterCorrection } from "./correction-data";

/** What corrections do to one passage. */
export interface PassageCorrections {
  /** The earliest correction's first. */
  readonly numbers: readonly SizeChange[];
  readonly texts: readonly string[];
}

/**
 * Corrections by the passages of a tester's text that they name. Who keeps an old number, or does not have the error,
 * keeps the number of their own size as it stands.
 *
 * @param corrections the newest first.
 * @returns by the key of the passage.
 */
export function passageCorrections(
  { sizes, instructions = "" }: Pick<PatternDocument, "sizes" | "instructions">,
  size: string,
  corrections: readonly TesterCorrection[],
): ReadonlyMap<string, PassageCorrections> {
  const found = byPassage(instructions, corrections.toReversed(), ({ numbers, text, answer }) => {
    const isOff = answer === "kept" || answer === "absent";
    const own = numbers.filter((number) => number.size !== size || !isOff);
    return { numbers: sizeChanges(sizes, own), text };
  });
  const together = ([key, all]: readonly [string, readonly { numbers: readonly SizeChange[]; text: string }[]]) =>
    [key, { numbers: all.flatMap(({ numbers }) => numbers), texts: all.map(({ text }) => text) }] as const;
  return new Map([...found].map(together));
}

/** What corrections say, by the key of each passage that they name, as far as the text still has it. */
export function byPassage<One extends Pick<TesterCorrection, "places">, Said>(
  instructions: string,
  corrections: readonly One[],
  said: (correction: One) => Said,
): ReadonlyMap<string, readonly Said[]> {
  const found = new Map<string, Said[]>();
  for (const correction of corrections)
    for (const place of correction.places) {
      const block = findBlock(instructions, place);
      if (block === null) continue;
      const key = placeKey(block.place);
      found.set(key, [...(found.get(key) ?? []), said(correction)]);
    }
  return found;
}

/** Changed numbers with the index of their size in place of its id. */
export function sizeChanges(sizes: PatternDocument["sizes"], numbers: readonly NumberChange[]): SizeChange[] {
  return numbers.map(({ size, ...change }) => ({ ...change, size: sizes.findIndex(({ id }) => id === size) }));
}

/** The pattern with the corrected numbers of a tester's size: as they answered, and corrected where they have not. */
export function correctedPattern(
  pattern: PatternDocument,
  size: string,
  corrections: readonly TesterCorrection[],
): PatternDocument {
  const answered = corrections.toReversed().map(({ numbers, worked, answer }) => {
    return { numbers, worked, answer: answer ?? ("following" as const) };
  });
  return patternAsAnswered(pattern, size, answeredCounts(size, answered));
}

/** The counts of a size that differ between a revision and the same with corrections. */
export function changedNumbers(before: PatternDocument, after: PatternDocument, size: string): NumberChange[] {
  return before.counts.flatMap(({ id: count }) => {
    const [was, becomes] = [before, after].map(({ grading }) => ownValue(ownValue(grading, count), size));
    return was === undefined || becomes === undefined || was === becomes ? [] : [{ count, size, was, becomes }];
  });
}
