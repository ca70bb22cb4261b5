import type { LengthUnit } from "@/engine/units";

export type YarnUnit = "m" | "yd";

/** Metres in an international yard, exact by definition (international yard and pound agreement, 1959). */
const METRES_PER_YARD = 0.9144;

/** Yarn is given in yards to people who work in inches. */
export function yarnUnit(unit: LengthUnit): YarnUnit {
  return unit === "in" ? "yd" : "m";
}

/** Metres of so many metres or yards. */
export function toMetres(value: number, unit: YarnUnit): number {
  return unit === "yd" ? value * METRES_PER_YARD : value;
}

/** The same length in the unit, unrounded. */
export function fromMetres(metres: number, unit: YarnUnit): number {
  return unit === "yd" ? metres / METRES_PER_YARD : metres;
}

/** `1420`: whole metres or yards, without the unit. */
export function formatYarnNumber(metres: number, unit: YarnUnit): string {
  return String(Math.round(fromMetres(metres, unit)));
}
