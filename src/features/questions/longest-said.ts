/** What somebody says of a place in the text may have so many characters. */
export const LONGEST_SAID = 2_000;
