import { parseLength, parseNumber, type LengthUnit } from "../units";

export type ReadNumber = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly says: string };

const MOST = 100_000;
const COUNTED = /^(.*?)\s*(?:sts?|stitch(?:es)?|rows?|rnds?|rounds?|ridges?)\.?$/i;
const RANGE = /^(\S+)\s*(?:-|–|—|to|bis)\s*(\S+)\s*(cm|mm|in|inches|″|"|”)?$/i;
const MILLIMETRES = /(\d+(?:[.,]\d+)?)\s*mm\b/i;
const GRAMS = /^(.*?)\s*(?:g|gr|grams?)\.?$/i;
const HOURS = /^(?:about|ca\.?|~|approx\.?)?\s*(.*?)\s*(?:h|hrs?|hours?)?\.?$/i;

/** A finished length above 0, cm. @param unit unit of a number without one. */
export function readLength(text: string, unit: LengthUnit): ReadNumber {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) return parsed;
  return aboveZero(parsed.cm, text);
}

/** A body measurement, cm: a length, or a span such as `81–86`, which counts by its middle. */
export function readBodyLength(text: string, unit: LengthUnit): ReadNumber {
  const span = RANGE.exec(text);
  const [, from = "", to = "", written = ""] = span ?? [];
  if (span === null || from.includes("/") || to.includes("/")) return readLength(text, unit);
  const low = readLength(`${from}${written}`, unit);
  const high = readLength(`${to}${written}`, unit);
  if (!low.ok) return readLength(text, unit);
  return high.ok ? { ok: true, value: (low.value + high.value) / 2 } : high;
}

/** A count as written, `172` or `172 sts`: a whole number, 0 or more. */
export function readCount(text: string): ReadNumber {
  const parsed = parseNumber(COUNTED.exec(text)?.[1] ?? text);
  if (!parsed.ok) return parsed;
  if (!Number.isInteger(parsed.value) || parsed.value < 0) {
    return { ok: false, says: `“${text}” is not a whole number, and stitches and rows are counted whole.` };
  }
  return inRange(parsed.value, text);
}

/** Stitches or rows of a swatch, which may hold a half. */
export function readSwatchCount(text: string): ReadNumber {
  const parsed = parseNumber(COUNTED.exec(text)?.[1] ?? text);
  return parsed.ok ? aboveZero(parsed.value, text) : parsed;
}

/** Size of a hook or needles, mm: `5`, `5,0 mm`, `H-8 (5 mm)`. */
export function readTool(text: string): ReadNumber {
  const parsed = parseNumber(MILLIMETRES.exec(text)?.[1] ?? text);
  if (parsed.ok) return aboveZero(parsed.value, text);
  return { ok: false, says: `“${text}” holds no size in millimetres. Write it like 5 mm.` };
}

/** Weight of yarn, g. */
export function readGrams(text: string): ReadNumber {
  const parsed = parseNumber(GRAMS.exec(text)?.[1] ?? text);
  return parsed.ok ? aboveZero(parsed.value, text) : parsed;
}

/** Hours spent, 0 or more. */
export function readHours(text: string): ReadNumber {
  const parsed = parseNumber(HOURS.exec(text)?.[1] ?? text);
  if (!parsed.ok) return parsed;
  return parsed.value < 0 ? { ok: false, says: `“${text}” is below 0.` } : inRange(parsed.value, text);
}

/** @returns whether the text begins like a number, with or without something behind it. */
export function looksNumeric(text: string): boolean {
  return /^[+~-]?[.,]?[\d½¼¾⅛⅜⅝⅞⅓⅔]/.test(text);
}

function aboveZero(value: number, text: string): ReadNumber {
  return value > 0 ? inRange(value, text) : { ok: false, says: `“${text}” is not above 0.` };
}

function inRange(value: number, text: string): ReadNumber {
  if (value <= MOST) return { ok: true, value };
  return { ok: false, says: `“${text}” is larger than anything that is measured or counted here.` };
}
