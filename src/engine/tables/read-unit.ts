import type { LengthUnit } from "../units";

/** The unit that an answer names, null where it names none, or both. */
export function namedUnit(text: string): LengthUnit | null {
  const inCm = /\bcms?\b|centim|\bmetric\b|zentimeter/i.test(text);
  const inInches = /\binch(?:es)?\b|^in\.?$|\bimperial\b|\bzoll\b|^["”″]$/i.test(text.trim());
  if (inCm === inInches) return null;
  return inCm ? "cm" : "in";
}
