import { markSizeNumbers } from "./mark-size-numbers";
import { readInstructions, type InstructionBlock } from "./read-instructions";

interface NumberOfSize {
  /** Index of the size, from 0. */
  readonly size: number;
  readonly number: number;
}

/**
 * The passages of a text that give a number in a size, where they list one for every size. A number that stands alone is
 * not looked for: it may be of anything.
 *
 * @param sizeCount how many sizes the pattern has.
 * @returns in the order of the text; headings are none.
 * @throws {RangeError} where there is no such size.
 */
export function passagesWith(text: string, sizeCount: number, wanted: NumberOfSize): InstructionBlock[] {
  return readInstructions(text).filter(
    ({ kind, text: words }) => kind !== "heading" && givesNumber(words, sizeCount, wanted),
  );
}

/** True where a passage gives this number in a size; see `passagesWith`. */
export function givesNumber(words: string, sizeCount: number, { size, number }: NumberOfSize): boolean {
  return markSizeNumbers(words, sizeCount, size).some(
    (segment) =>
      segment.kind === "sizes" && segment.parts.some((part) => part.size === size && part.text === String(number)),
  );
}
