import { isPlausible, PLAUSIBLE, rangeText } from "../pattern";
import { readGrams } from "../tables/read-cell";
import { GRAMS_PER_OUNCE, METRES_PER_YARD, parseNumber, type LengthUnit } from "../units";
import type { ReadText } from "./form";

const OUNCES = /^(.*?)\s*(?:oz|ounces?)\.?$/i;
const METRES_OR_YARDS = /^(.*?)\s*(m|mtr|met(?:re|er)s?|yds?|yards?)\.?$/i;

/** Weight of yarn, g: `50`, `50 g` or `1 3/4 oz`. */
export function readWeight(text: string): ReadText<number> {
  const ounces = OUNCES.exec(text)?.[1];
  if (ounces === undefined) return readGrams(text);
  const read = readGrams(ounces);
  return read.ok ? { ok: true, value: read.value * GRAMS_PER_OUNCE } : read;
}

/** Length of yarn on a ball, m: metres or yards as written, else yards for those who work in inches. */
export function readBallLength(text: string, unit: LengthUnit): ReadText<number> {
  const [, number = text, written = unit === "in" ? "yd" : "m"] = METRES_OR_YARDS.exec(text) ?? [];
  const parsed = parseNumber(number);
  if (!parsed.ok) return parsed;
  const metres = written.toLowerCase().startsWith("y") ? parsed.value * METRES_PER_YARD : parsed.value;
  if (isPlausible(metres, PLAUSIBLE.ballMetres)) return { ok: true, value: metres };
  return {
    ok: false,
    message: `“${text}” cannot be right here: a ball holds ${rangeText(PLAUSIBLE.ballMetres)}. Look at its label again.`,
  };
}

/** `160 m` or `175 yd`, whole ones. */
export function formatYarnLength(metres: number, unit: LengthUnit): string {
  return unit === "in" ? `${Math.round(metres / METRES_PER_YARD)} yd` : `${Math.round(metres)} m`;
}
