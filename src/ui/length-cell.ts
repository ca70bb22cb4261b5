import { fromCm, type LengthUnit } from "@/engine/units";
import { shownStep } from "./format-length";

/** A length for a spreadsheet: a number in the reader's unit, to 0.1 cm or 1/8 in; blank where there is none. */
export function lengthCell(cm: number | null, unit: LengthUnit): number | "" {
  if (cm === null) return "";
  const step = shownStep(unit);
  const steps = Math.round(Math.abs(fromCm(cm, unit)) / step);
  // A tenth is not exact in binary, and `−0` would be shown with its sign.
  return steps === 0 ? 0 : Math.sign(cm) * Number((steps * step).toFixed(3));
}
