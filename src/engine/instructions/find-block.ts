import type { Place } from "./place";
import { readInstructions, type InstructionBlock } from "./read-instructions";

/** Less alike than this is another block; common practice, no source. */
const MIN_SIMILARITY = 0.6;

/**
 * The block that a question was pinned to, in a text that may have changed since.
 *
 * The same words win, the nearest where they stand more than once; else the block that is most alike, numbers apart, for a
 * revision changes those first; of equals the nearest.
 *
 * @returns null where no block is alike.
 */
export function findBlock(text: string, place: Place): InstructionBlock | null {
  const nearestFirst = readInstructions(text).toSorted(
    (left, right) => Math.abs(left.place.block - place.block) - Math.abs(right.place.block - place.block),
  );
  const same = nearestFirst.find(({ place: { hash, words } }) => hash === place.hash && words === place.words);
  if (same) return same;
  const target = wordPairs(place.words);
  let best: InstructionBlock | null = null;
  let bestSimilarity = MIN_SIMILARITY;
  for (const block of nearestFirst) {
    const similarity = diceSimilarity(target, wordPairs(block.place.words));
    if (similarity > bestSimilarity || (best === null && similarity === bestSimilarity)) {
      best = block;
      bestSimilarity = similarity;
    }
  }
  return best;
}

/** Neighbouring words in pairs, every number the same word. */
function wordPairs(words: string): ReadonlySet<string> {
  const plain = words
    .toLowerCase()
    .replace(/\d+(?:[.,]\d+)?/g, " 0 ")
    .match(/[\p{L}0]+/gu);
  const list = ["", ...(plain ?? []), ""];
  return new Set(list.slice(1).map((word, index) => `${list[index] ?? ""} ${word}`));
}

/** Share of pairs that two texts have in common, 0–1 (Dice 1945). */
function diceSimilarity(left: ReadonlySet<string>, right: ReadonlySet<string>): number {
  let common = 0;
  for (const pair of left) if (right.has(pair)) common += 1;
  return (2 * common) / (left.size + right.size);
}
