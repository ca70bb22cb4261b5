/** Where a block of the instructions stands: to be kept beside a question, and to find the block again. */
export interface Place {
  /** Number of the block, from 0. */
  readonly block: number;
  /** Of the block's words, so that the same words are known again. */
  readonly hash: string;
  /** Its first words. */
  readonly words: string;
}

const MAX_CHARACTERS = 240;

/** @param block number of the block, from 0. */
export function placeOf(text: string, block: number): Place {
  const words = text.replace(/\s+/g, " ").trim();
  return { block, hash: hashOf(words), words: words.slice(0, MAX_CHARACTERS).toWellFormed() };
}

/** FNV-1a over UTF-16 code units, 32 bits in hexadecimal: it tells texts apart and guards nothing. */
function hashOf(words: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < words.length; index += 1) hash = Math.imul(hash ^ words.charCodeAt(index), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, "0");
}
