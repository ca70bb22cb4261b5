import { toCm, type LengthUnit } from "./length";
import { parseNumber } from "./parse-number";

export type ParsedLength =
  | { readonly ok: true; readonly cm: number; readonly unit: LengthUnit }
  | { readonly ok: false; readonly message: string };

const WITH_UNIT = /^(.*?)\s*(cm|mm|in|inch|inches|″|"|”)\.?$/i;

/**
 * Length that a person typed, in centimetres. A unit written behind the number wins over the unit of the field.
 *
 * @param typed text such as `38,5`, `12 3/8 in`, `12 3/8"` or `965 mm`.
 * @param unit unit of a number without one.
 * @returns the length in cm and the unit it was read in, or a sentence that says what is wrong.
 */
export function parseLength(typed: string, unit: LengthUnit): ParsedLength {
  const match = WITH_UNIT.exec(typed.trim());
  const written = match?.[2]?.toLowerCase();
  const parsed = parseNumber(match?.[1] ?? typed);
  if (!parsed.ok) return parsed;
  if (written === "mm") return { ok: true, cm: parsed.value / 10, unit: "cm" };
  const readIn = written === undefined ? unit : written === "cm" ? "cm" : "in";
  return { ok: true, cm: toCm(parsed.value, readIn), unit: readIn };
}
