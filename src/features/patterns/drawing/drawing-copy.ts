const LONGEST_LETTER = 4;

/** A letter that fits on a schematic; a longer word is cut to its start. */
export function shortLetter(letter: string): string {
  return letter.length > LONGEST_LETTER ? `${letter.slice(0, LONGEST_LETTER - 1)}…` : letter;
}

/** Before what is wrong. */
export const FAULT_SIGN = "▲";
