import { isPlausible, PLAUSIBLE, rangeText, type PlausibleRange } from "../pattern/plausible-ranges";
import { parseLength, parseNumber, type LengthUnit } from "../units";
import { plainLength, plainNumber, plainWhole, spanOf } from "./plain-number";

export type ReadNumber =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

const COUNTED =
  /^(.*?)\s*(?:sts?|stitch(?:es)?|rows?|rnds?|rounds?|ridges?|chains?|ch|m|maschen|r|reihen|rd|runden|mailles?|rangs?)\.?$/i;
const MILLIMETRES = /(\d+(?:[.,]\d+)?)\s*mm\b/i;
const GRAMS = /^(.*?)\s*(?:g|gr|grams?|gramm)\.?$/i;
const HOURS = /^(.*?)\s*(?:h|hrs?|hours?|stunden|std)?\.?$/i;
/** A span of a finished length is a reading only where its ends lie this near each other; common practice, no source. */
const MAX_SPAN_RATIO = 1.15;

/** A length above 0, cm. @param unit unit of a number without one. @param range of a finished length, else of another. */
export function readLength(text: string, unit: LengthUnit, range: PlausibleRange = PLAUSIBLE.finishedCm): ReadNumber {
  const parsed = parseLength(plainLength(text), unit);
  return parsed.ok ? aboveZero(parsed.cm, { text, range, unit }) : parsed;
}

/** A length in a table, cm; of a narrow span such as `58–59` its middle. */
export function readTableLength(text: string, unit: LengthUnit): ReadNumber {
  return readSpan(text, { unit, range: PLAUSIBLE.finishedCm, maxRatio: MAX_SPAN_RATIO });
}

/** A body measurement, cm: a length, or a span such as `81–86`, which counts by its middle. */
export function readBodyLength(text: string, unit: LengthUnit): ReadNumber {
  return readSpan(text, { unit, range: PLAUSIBLE.bodyCm, maxRatio: Infinity });
}

function readSpan(
  text: string,
  { unit, range, maxRatio }: { unit: LengthUnit; range: PlausibleRange; maxRatio: number },
): ReadNumber {
  const whole = readLength(text, unit, range);
  const span = whole.ok ? null : spanOf(plainLength(text));
  if (span === null) return whole;
  const [low, high] = span.map((end) => readLength(end, unit, range));
  if (!low?.ok || !high) return whole;
  if (!high.ok) return /\d/.test(span[1]) ? high : whole;
  if (high.value < low.value || high.value > low.value * maxRatio) return whole;
  return { ok: true, value: (low.value + high.value) / 2 };
}

/** A count as written, `172` or `172 sts`: a whole number, 0 or more. */
export function readCount(text: string): ReadNumber {
  const parsed = parseNumber(plainWhole(COUNTED.exec(text)?.[1] ?? text), "96");
  if (!parsed.ok) return parsed;
  if (!Number.isInteger(parsed.value) || parsed.value < 0) {
    return { ok: false, message: `“${text}” is not a whole number, and stitches and rows are counted whole.` };
  }
  return inRange(parsed.value, { text, range: PLAUSIBLE.count });
}

/** Stitches or rows of a swatch, which may hold a half. */
export function readSwatchCount(text: string): ReadNumber {
  const plain = plainNumber(text);
  const parsed = parseNumber(COUNTED.exec(plain)?.[1] ?? plain, "22 or 22.5");
  return parsed.ok ? aboveZero(parsed.value, { text, range: PLAUSIBLE.swatchCount }) : parsed;
}

/** Size of a hook or needles, mm: `5`, `5,0 mm`, `H-8 (5 mm)`. */
export function readTool(text: string): ReadNumber {
  const parsed = parseNumber(MILLIMETRES.exec(text)?.[1] ?? text);
  if (parsed.ok) return aboveZero(parsed.value, { text, range: PLAUSIBLE.toolMm });
  return { ok: false, message: `“${text}” holds no size in millimetres. Write it like 5 mm.` };
}

/** Weight of yarn, g. */
export function readGrams(text: string): ReadNumber {
  const parsed = parseNumber(plainWhole(GRAMS.exec(text)?.[1] ?? text), "50 or 50.5");
  return parsed.ok ? gramsInRange(parsed.value, text) : parsed;
}

/** @returns the weight if it can be yarn somebody used, else a sentence about the text that tells it. */
export function gramsInRange(grams: number, text: string): ReadNumber {
  return aboveZero(grams, { text, range: PLAUSIBLE.grams });
}

/** Hours spent, 0 or more. */
export function readHours(text: string): ReadNumber {
  const plain = plainWhole(text);
  const parsed = parseNumber(HOURS.exec(plain)?.[1] ?? plain, "38 or 38.5");
  if (!parsed.ok) return parsed;
  return parsed.value < 0
    ? { ok: false, message: `“${text}” is below 0.` }
    : inRange(parsed.value, { text, range: PLAUSIBLE.hours });
}

/** @returns whether the text begins like a number, with or without something behind it. */
export function looksNumeric(text: string): boolean {
  return /^[+-]?[.,]?[\d½¼¾⅛⅜⅝⅞⅓⅔]/.test(plainNumber(text));
}

interface Ranged {
  readonly text: string;
  readonly range: PlausibleRange;
  /** The reader's, for a length. */
  readonly unit?: LengthUnit;
}

function aboveZero(value: number, ranged: Ranged): ReadNumber {
  return value > 0 ? inRange(value, ranged) : { ok: false, message: `“${ranged.text}” is not above 0.` };
}

function inRange(value: number, { text, range, unit }: Ranged): ReadNumber {
  if (isPlausible(value, range)) return { ok: true, value };
  return { ok: false, message: `“${text}” cannot be right here: it must be ${rangeText(range, unit)}.` };
}

const YES =
  /^(?:y|yes|yes,? .*|true|1|x|washed|blocked|washed and blocked|washed & blocked|wet blocked|ja|oui|si|sí)\.?$/i;
const NO = /^(?:n|no|no,? .*|not .*|false|0|unwashed|unblocked|nein|non)\.?$/i;

/** @returns true or false where the text says so, null where it says something else. */
export function readYesNo(text: string): boolean | null {
  if (YES.test(text)) return true;
  return NO.test(text) ? false : null;
}

export function readsAsYesOrNo(text: string): boolean {
  return readYesNo(text) !== null;
}
