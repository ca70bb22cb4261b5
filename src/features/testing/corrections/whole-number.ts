import { isPlausible, PLAUSIBLE, rangeText } from "@/engine/pattern";

/** A count as typed; null where it is no whole number in range. */
export function wholeNumber(text: string): number | null {
  if (!/^\d{1,9}$/.test(text.trim())) return null;
  return isPlausible(Number(text), PLAUSIBLE.count) ? Number(text) : null;
}

export const WHOLE_NUMBERS = `whole numbers such as 48; each must be ${rangeText(PLAUSIBLE.count)}.`;
