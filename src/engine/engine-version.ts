/** Raised whenever the same document may give other numbers, so that stored analyses are reckoned anew. */
export const ENGINE_VERSION = "4";
