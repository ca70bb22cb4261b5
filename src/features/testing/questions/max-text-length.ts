/** The greatest number of characters of a question, an answer or a trouble spot. */
export const MAX_TEXT_LENGTH = 2_000;
