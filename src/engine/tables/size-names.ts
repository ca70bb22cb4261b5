import { normalised } from "./label-text";

const IN_WORDS: ReadonlyMap<string, string> = new Map([
  ["extra small", "xs"],
  ["x small", "xs"],
  ["small", "s"],
  ["medium", "m"],
  ["large", "l"],
  ["extra large", "xl"],
  ["x large", "xl"],
  ["one", "1"],
  ["two", "2"],
  ["three", "3"],
  ["four", "4"],
  ["five", "5"],
  ["six", "6"],
]);

/** A size's name in one spelling: "Size 2XL", "2X" and "XXL" are all `2x`. */
function sizeKey(text: string): string {
  const bare = normalised(text)
    .replace(/\bsizes?\b|\bgrosse\b|\bgr\.|\btaille\b|\btalla\b|\bmaat\b|\beu\b|\bus\b|\buk\b/g, " ")
    .replace(/\b(\d{1,2}) ?(?:years?|yrs?|y|jahre)\b/g, "$1y")
    .replace(/\b(\d{1,2}) ?(?:months?|mos?|monate)\b/g, "$1mo")
    .replace(/[^\p{L}\d]+/gu, " ")
    .trim();
  const word = (IN_WORDS.get(bare) ?? bare).replaceAll(" ", "");
  const many = /^(x{2,6})([sl]?)$/.exec(word);
  if (many) return `${many[1]?.length ?? 0}x${many[2] === "s" ? "s" : ""}`;
  return word.replace(/^(\d)x[l]$/, "$1x");
}

const ONE_NAME = /^(?:\dxs|\dx|xs|s|m|l|xl|t\d|\dt|\d{1,3}|\d{1,2}y|\d{1,2}mo|newborn|onesize)$/;

/** @returns whether a heading reads like a size: S, 2X, XS/S, 38, 1. */
export function isSizeName(text: string): boolean {
  if (/^\d{1,3}$/.test(text)) return true;
  if (text.length > 30) return false;
  const name = text.replace(/\s*[(:].*$/, "").trim();
  return name !== "" && name.split(/[/–-]/).every((part) => ONE_NAME.test(sizeKey(part)));
}

export type SizeMatch = { readonly ok: true; readonly size: string } | { readonly ok: false; readonly message: string };

interface NamedSize {
  readonly id: string;
  readonly label: string;
}

/**
 * The size that a person means.
 *
 * @param typed a tester's text, such as "Size M", "m" or "XXL".
 * @param sizes of the pattern.
 * @returns the one size it can be, or a sentence with the sizes there are; ambiguous texts are never guessed.
 */
export function matchSize(typed: string, sizes: readonly NamedSize[]): SizeMatch {
  const key = sizeKey(typed);
  const ways: readonly ((size: NamedSize) => boolean)[] = [
    ({ label }) => normalised(label) === normalised(typed),
    ({ label }) => sizeKey(label) === key,
    ({ id }) => id === normalised(typed),
    ({ label }) => label.split(/[^\p{L}\d]+/u).some((part) => sizeKey(part) === key && key !== ""),
    ({ label }) => typed.split(/[^\p{L}\d]+/u).some((part) => part !== "" && sizeKey(part) === sizeKey(label)),
  ];
  for (const fits of ways) {
    const found = sizes.filter(fits);
    const [only] = found;
    if (only !== undefined && found.length === 1) return { ok: true, size: only.id };
    if (found.length > 1) break;
  }
  const labels = sizes.map(({ label }) => label).join(", ");
  return { ok: false, message: `“${typed}” is not one size of this pattern. Its sizes are ${labels}.` };
}
