/** The greatest number of characters of a question, an answer or a trouble spot. */
export const LONGEST_SAID = 2_000;
