import { fromCm, toCm, type LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { formatLength } from "@/ui/format-length";
import type { AskedMeasurement } from "./apply-form";

/** How far below the smallest size and above the largest a body is taken without a question; common practice, no source. */
const LEAST_SHARE = 0.7;
const MOST_SHARE = 1.4;

/**
 * A question about a body measurement that is far from all sizes of the pattern, most often one in the other unit.
 *
 * @param cm as it was read. @param unit the one it was read in.
 * @returns null where there is nothing to ask.
 */
export function bodyDoubt(cm: number, unit: LengthUnit, { label, fromCm: least, toCm: most }: AskedMeasurement) {
  const isNear = (length: number) => length >= least * LEAST_SHARE && length <= most * MOST_SHARE;
  if (isNear(cm)) return null;
  const number = formatExactLength(cm, unit);
  const other = unit === "cm" ? "in" : "cm";
  const read = `This was read as ${number} ${unit}.`;
  if (isNear(toCm(fromCm(cm, unit), other)))
    return `${read} Is that in ${other === "in" ? "inches" : "centimetres"}? Then write “${number} ${other}”. ${AGAIN}`;
  const sizes = `${formatLength(least, unit)} to ${formatLength(most, unit)}`;
  return `${read} The sizes of this pattern are for ${label.toLowerCase()} ${sizes}. ${AGAIN}`;
}

const AGAIN = "If it is right as it stands, send the form again: you will not be asked twice.";
