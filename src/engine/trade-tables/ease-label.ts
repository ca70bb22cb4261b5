import type { Provenance } from "./provenance";

/** Source of the labels for ease. */
export const EASE_CHART: Provenance = {
  source: "Craft Yarn Council, Standards & Guidelines for Crochet and Knitting, ease and fit chart",
  mark: "memory",
};

export type EaseLabel = "very close fitting" | "close fitting" | "standard fit" | "loose fit" | "oversized";

/** Lower limit of each label, cm, the loosest first; the chart prints 2.5 cm to the inch. */
const FROM_CM: readonly (readonly [fromCm: number, word: EaseLabel])[] = [
  [15, "oversized"],
  [10, "loose fit"],
  [5, "standard fit"],
];

/** Smaller differences are rounding errors, cm. */
const ROUNDING_CM = 1e-9;

/**
 * The usual label for an ease at the bust.
 *
 * The chart's bands share their ends ("2–4 inches", "4–6 inches"), and it says "6 inches or more" and "body size or less":
 * so an end belongs to the looser word, and an ease of nothing is very close fitting. What lies between nothing and the
 * first inch stands in no band; it is more than the body and called close fitting.
 *
 * @param easeCm finished garment less body at the bust, cm; may be negative.
 * @see EASE_CHART, from memory.
 */
export function easeLabel(easeCm: number): EaseLabel {
  const found = FROM_CM.find(([fromCm]) => easeCm >= fromCm - ROUNDING_CM);
  if (found !== undefined) return found[1];
  return easeCm > ROUNDING_CM ? "close fitting" : "very close fitting";
}
