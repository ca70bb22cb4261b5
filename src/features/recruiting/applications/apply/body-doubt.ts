import { fromCm, toCm, type LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { formatLength } from "@/ui/format-length";
import type { AskedMeasurement } from "./apply-answer";

/** How far below the smallest and above the largest size a body is accepted without a question. */
const MIN_SHARE = 0.7;
const MAX_SHARE = 1.4;

/**
 * A question about a body measurement that is far from all sizes of the pattern, usually one in the other unit.
 *
 * @param cm the length that was read. @param unit its unit.
 * @returns null if there is nothing to ask.
 */
export function bodyDoubt(cm: number, unit: LengthUnit, { label, fromCm: minCm, toCm: maxCm }: AskedMeasurement) {
  const isNear = (length: number) => length >= minCm * MIN_SHARE && length <= maxCm * MAX_SHARE;
  if (isNear(cm)) return null;
  const number = formatExactLength(cm, unit);
  const other = unit === "cm" ? "in" : "cm";
  const read = `You entered ${number} ${unit}.`;
  if (isNear(toCm(fromCm(cm, unit), other)))
    return `${read} Did you mean ${other === "in" ? "inches" : "centimetres"}? Then enter “${number} ${other}”.`;
  const sizes = `${formatLength(minCm, unit)} to ${formatLength(maxCm, unit)}`;
  return `${read} This pattern’s sizes are made for ${label.toLowerCase()} ${sizes}.`;
}
