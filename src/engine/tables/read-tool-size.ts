import { usToolMm, type UsSize } from "../trade-tables/us-tool-sizes";
import { parseNumber } from "../units";
import { readTool, type ReadNumber } from "./read-cell";

type Craft = Parameters<typeof usToolMm>[0];

const US =
  /^(?:U\.?S\.?A?\.?(?![a-z]))?\s*(?:size\b|no\.?|#)?\s*(.*?)\s*(?:\(?U\.?S\.?A?\)?)?(?:\s*(?:hook|needles?))?$/i;
const HOOK = /^([a-z])?(?:\s*\/\s*([a-z])(?![a-z]))?[\s/-]*([\d.,/ ½]*)$/i;
const ZEROS = /^0{1,3}$/;

/**
 * Size of a hook or needles, mm: `5`, `5,0 mm`, `US 8`, `H/8`, `H-8 (5 mm)`. Written millimetres win; a bare number is
 * millimetres; hooks and needles have different US names.
 */
export function readToolSize(text: string, craft: Craft): ReadNumber {
  const inMm = readTool(text);
  if (inMm.ok) return inMm;
  const size = usSize(US.exec(text.trim())?.[1] ?? "");
  const mm = size && usToolMm(craft, size);
  if (mm !== undefined) return { ok: true, value: mm };
  const isNumber = parseNumber(text).ok || /mm/i.test(text);
  const example = craft === "crochet" ? "H-8" : "US 8";
  return isNumber
    ? inMm
    : { ok: false, message: `“${text}” is no size that we know. Write it like 5 mm or ${example}.` };
}

/** Thickness of the needle or hook that has a number as its US size, mm; undefined where there is none. */
export function usNumberMm(number: number, craft: Craft): number | undefined {
  return usToolMm(craft, { letters: [], number: String(number) });
}

function usSize(text: string): UsSize | undefined {
  const found = HOOK.exec(text);
  if (found === null) return undefined;
  const [, first, second, written = ""] = found;
  const letters = [first, second].flatMap((letter) => (letter === undefined ? [] : [letter.toUpperCase()]));
  const number = usNumber(written.trim());
  return number === undefined ? undefined : { letters, number };
}

/** @returns the number as the tables write it, null for none, undefined for what is no number. */
function usNumber(text: string): string | null | undefined {
  if (text === "") return null;
  if (ZEROS.test(text)) return text;
  const parsed = parseNumber(text);
  return parsed.ok ? String(parsed.value) : undefined;
}
