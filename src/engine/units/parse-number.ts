export type ParsedNumber =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

const DECIMAL = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/;
const MIXED = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)$/;
const VULGAR: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

const EXAMPLES = "38.5, 38,5 or 12 3/8";

/**
 * Number that a person typed: a decimal with a point or a comma, a fraction, or a whole number and a fraction.
 *
 * "1.234,5" and "1,234.5" are refused: which mark parts the thousands is a guess.
 *
 * @param typed text as typed, without a unit, such as `38,5`, `12 3/8` or `12½`.
 * @param examples what would do, for the sentence.
 * @returns the number, or a sentence that says what is wrong with the text.
 */
export function parseNumber(typed: string, examples = EXAMPLES): ParsedNumber {
  const text = plainFractions(typed).trim().replace(/−/g, "-");
  if (text === "" || text === "-") return { ok: false, message: "A number is missing here." };
  const mixed = MIXED.exec(text);
  if (mixed) return parseMixed(mixed, typed);
  const decimal = text.includes(".") ? text : text.replace(",", ".");
  if (DECIMAL.test(decimal)) return { ok: true, value: Number(decimal) };
  return { ok: false, message: `“${shorten(typed)}” is not a number. Write it like ${examples}.` };
}

function plainFractions(typed: string): string {
  return typed.replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${VULGAR[sign] ?? sign}`);
}

function parseMixed([, sign, whole, numerator, denominator]: RegExpExecArray, typed: string): ParsedNumber {
  const divisor = Number(denominator);
  if (divisor === 0) return { ok: false, message: `“${shorten(typed)}” divides by zero.` };
  const value = Number(whole ?? 0) + Number(numerator) / divisor;
  return { ok: true, value: sign === "-" ? -value : value };
}

/** A minus before words comes from a word beside the field, and was not typed. */
function shorten(typed: string): string {
  const text = typed.trim().replace(/^-(?=\p{L})/u, "");
  return text.length > 30 ? `${text.slice(0, 29)}…` : text;
}
