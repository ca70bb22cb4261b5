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
  const found = new Map<string, { numbers: SizeChange[]; texts: string[] }>();
  for (const { places, numbers, text, answer } of corrections.toReversed()) {
    const isOff = answer === "kept" || answer === "absent";
    const changes = numbers
      .filter((number) => number.size !== size || !isOff)
      .map(({ size: id, ...change }) => ({ ...change, size: sizes.findIndex((one) => one.id === id) }));
    for (const place of places) {
      const block = findBlock(instructions, place);
      if (block === null) continue;
      const key = placeKey(block.place);
      const passage = found.get(key) ?? { numbers: [], texts: [] };
      passage.numbers.push(...changes);
      passage.texts.push(text);
      found.set(key, passage);
    }
  }
  return found;
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
