import { findBlock, readInstructions, textWithChanges, type SizeChange } from "@/engine/instructions";
import { ownValue, type PatternDocument } from "@/engine/pattern";
import { placeKey } from "../questions/place-key";
import type { Correction } from "./correction-data";

/**
 * A pattern that has taken corrections in: their numbers in the grading, and in the passages that they name.
 *
 * @param corrections the earliest first.
 * @returns the pattern, and whether anything in it changed.
 */
export function revisedPattern(
  pattern: PatternDocument,
  corrections: readonly Pick<Correction, "numbers" | "places">[],
): { readonly document: PatternDocument; readonly isChanged: boolean } {
  const { counts, sizes, instructions } = pattern;
  const grading = { ...pattern.grading };
  let isChanged = false;
  for (const { count, size, becomes } of corrections.flatMap(({ numbers }) => numbers)) {
    const isKnown = counts.some(({ id }) => id === count) && sizes.some(({ id }) => id === size);
    if (!isKnown || ownValue(ownValue(grading, count), size) === becomes) continue;
    grading[count] = { ...ownValue(grading, count), [size]: becomes };
    isChanged = true;
  }
  const text = instructions === undefined ? undefined : revisedText(pattern, corrections);
  return {
    document: { ...pattern, grading, ...(text === undefined ? {} : { instructions: text }) },
    isChanged: isChanged || text !== instructions,
  };
}

function revisedText(
  { instructions = "", sizes }: Pick<PatternDocument, "instructions" | "sizes">,
  corrections: readonly Pick<Correction, "numbers" | "places">[],
): string {
  const changes = new Map<string, SizeChange[]>();
  for (const { numbers, places } of corrections) {
    const ofSizes = numbers.map(({ size, ...change }) => ({
      ...change,
      size: sizes.findIndex(({ id }) => id === size),
    }));
    for (const place of places) {
      const block = findBlock(instructions, place);
      if (block !== null)
        changes.set(placeKey(block.place), [...(changes.get(placeKey(block.place)) ?? []), ...ofSizes]);
    }
  }
  return readInstructions(instructions)
    .map(({ lead, text, tail, place, kind }) => {
      const own = kind === "heading" ? [] : (changes.get(placeKey(place)) ?? []);
      return `${lead}${own.length === 0 ? text : textWithChanges(text, sizes.length, own)}${tail}`;
    })
    .join("");
}
