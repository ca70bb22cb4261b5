import { parseLength, type LengthUnit } from "@/engine/units";
import type { AskedMeasurement } from "./apply-answer";
import { bodyDoubt } from "./body-doubt";

const MAX_BODY_CM = 1_000;
const LONGEST = { cm: "1,000 cm", in: "393 in" } as const;
export const EXAMPLE_LENGTH = { cm: "97 cm", in: "38 1/4 in" } as const;

/** A typed body measurement: its length and a question where it is unusual, or what is wrong with it. */
export type ReadBodyLength =
  | { readonly ok: true; readonly cm: number; readonly doubt: string | null }
  | { readonly ok: false; readonly fault: string };

/** @param written what was typed, not empty. @param unit of numbers without one. */
export function readBodyLength(written: string, unit: LengthUnit, measurement: AskedMeasurement): ReadBodyLength {
  const length = parseLength(written, unit);
  if (!length.ok) return { ok: false, fault: length.message };
  if (length.cm <= 0 || length.cm > MAX_BODY_CM)
    return { ok: false, fault: `Enter a length of at most ${LONGEST[unit]}, such as ${EXAMPLE_LENGTH[unit]}.` };
  return { ok: true, cm: length.cm, doubt: bodyDoubt(length.cm, length.unit, measurement) };
}
