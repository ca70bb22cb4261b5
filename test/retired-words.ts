/* The words of the screens and of the code. A word is retired when a reader would stop at it; the list stays short and true. */

/** In no file at all: people are they, and what is computed is calculated. */
export const NOWHERE = /\b(she|hers?|herself|reckon\w*)\b/i;

/** Not in what people read: a private dialect, each beside what is said instead. */
const NOT_ON_SCREENS: readonly (readonly [retired: RegExp, instead: string])[] = [
  [/\bmend(s|ed|ing)?\b/i, "fix"],
  [/\bslips?\b/i, "possible mistake"],
  [/\bset aside\b/i, "excluded"],
  [/\bwhat is behind it\b/i, "likely causes"],
  [/\bon size\b/i, "as planned"],
  [/\bnot settled yet\b/i, "not enough data yet"],
  [/\bdoubtful\b/i, "possible mistakes"],
  [/(?<![-/.\w])gaps?(?![-/.\w])/i, "differences"],
  [/\bgive places?\b/i, "assign sizes"],
  [/\bbring (a|the) document\b/i, "import file"],
  [/\bas a document\b/i, "export file"],
  [/\bbegin a pattern\b/i, "new pattern"],
  [/\bword of yours\b|\bby your word\b/i, "your decision"],
  [/\bthrow(n|s)? away\b/i, "discard"],
  [/\bput off the end\b/i, "extend deadline"],
  [/\bdrawn roughly\b/i, "sketch, not to scale"],
  [/\bto the last stitch\b|(?<!most )\beven steps\b/i, "closest to target measurements, most even steps"],
  [/\bexchanged\b/i, "swapped"],
  [/\bon purpose otherwise\b|\botherwise on purpose\b/i, "changed on purpose"],
  [/\bfrom memory\b|\bno source\b/i, "nothing: provenance belongs to the method page"],
];

/** @returns each retired word of a text, with some of what stands about it and what to write instead. */
export function retiredWords(text: string): string[] {
  const retired = [[NOWHERE, "they, or calculated"] as const, ...NOT_ON_SCREENS];
  return retired.flatMap(([word, instead]) => {
    const found = word.exec(text);
    return found === null ? [] : [`“${text.slice(Math.max(0, found.index - 20), found.index + 30)}”: write ${instead}`];
  });
}
