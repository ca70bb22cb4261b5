import { readInstructions, textWithChanges } from "@/engine/instructions";
import { canonicalJson, withCounts, type PatternDocument } from "@/engine/pattern";
import { placeKey } from "../questions/place-key";
import type { Correction } from "./correction-data";
import { byPassage, sizeChanges } from "./passage-corrections";

type TakenIn = readonly Pick<Correction, "numbers" | "places">[];

/**
 * A pattern that has taken corrections in: their numbers in the grading, and in the passages that they name.
 *
 * @param corrections the earliest first.
 * @returns the pattern, and whether anything in it changed.
 */
export function revisedPattern(
  pattern: PatternDocument,
  corrections: TakenIn,
): { readonly document: PatternDocument; readonly isChanged: boolean } {
  const changes = corrections.flatMap(({ numbers }) =>
    numbers.map(({ becomes: number, ...of }) => ({ ...of, number })),
  );
  const { instructions } = pattern;
  const text = instructions === undefined ? {} : { instructions: revisedText(instructions, pattern, corrections) };
  const document = { ...withCounts(pattern, changes), ...text };
  return { document, isChanged: canonicalJson(document) !== canonicalJson(pattern) };
}

function revisedText(instructions: string, { sizes }: Pick<PatternDocument, "sizes">, corrections: TakenIn): string {
  const changes = byPassage(instructions, corrections, ({ numbers }) => sizeChanges(sizes, numbers));
  return readInstructions(instructions)
    .map(({ lead, text, tail, place, kind }) => {
      const own = kind === "heading" ? [] : (changes.get(placeKey(place)) ?? []).flat();
      return `${lead}${own.length === 0 ? text : textWithChanges(text, sizes.length, own)}${tail}`;
    })
    .join("");
}
