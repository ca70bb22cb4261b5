/** Raised whenever the same document may give other numbers, so that stored analyses are calculated again. */
export const ENGINE_VERSION = "9";
