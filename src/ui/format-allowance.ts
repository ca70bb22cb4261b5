import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "./format-exact-length";

/** `adds 1 cm`, `takes 2 cm`: the sign of an edging or seam is always a word. */
export function allowanceWords(cm: number, unit: LengthUnit): string {
  const length = `${formatExactLength(Math.abs(cm), unit)} ${unit}`;
  if (cm === 0) return "adds nothing";
  return cm > 0 ? `adds ${length}` : `takes ${length}`;
}
