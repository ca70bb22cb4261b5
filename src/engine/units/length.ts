/** Centimetres in one international inch, exact by definition (international yard and pound agreement, 1959). */
export const CM_PER_INCH = 2.54;

export type LengthUnit = "cm" | "in";

/**
 * Length in centimetres of a length given in a unit.
 *
 * @param value length in `unit`.
 * @returns the same length in cm.
 */
export function toCm(value: number, unit: LengthUnit): number {
  return unit === "in" ? value * CM_PER_INCH : value;
}

/**
 * Length in a unit of a length given in centimetres.
 *
 * @param cm length in cm.
 * @returns the same length in `unit`.
 */
export function fromCm(cm: number, unit: LengthUnit): number {
  return unit === "in" ? cm / CM_PER_INCH : cm;
}
