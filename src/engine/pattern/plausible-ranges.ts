import { fromCm, type LengthUnit } from "../units";

/** The plausible range of a number in a document. */
export interface PlausibleRange {
  readonly min: number;
  readonly max: number;
  /** Text after the numbers. Lengths in "cm" are shown in the reader's unit. */
  readonly unit: "" | "cm" | "mm" | "g" | "m" | "m in 100 g" | "hours" | "times";
}

/**
 * The bounds of all numbers in documents (common practice, no source): wide enough for machine lace,
 * dolls' clothes and large carpets, and narrow enough that products, quotients and weights stay
 * far from overflow.
 */
export const PLAUSIBLE = {
  /** Sewing-thread lace to arm-thick rope: stitches or rows over 10 cm, of a pattern and of a swatch. */
  gauge: { min: 0.5, max: 300, unit: "" },
  /** Steel hooks begin at 0.5 mm; the thickest needles have 50. */
  toolMm: { min: 0.25, max: 60, unit: "mm" },
  /** Over what a gauge is stated, or a swatch counted. */
  swatchCm: { min: 0.5, max: 500, unit: "cm" },
  /** Stitches or rows that somebody counts in a swatch; a half counts. */
  swatchCount: { min: 0.5, max: 5_000, unit: "" },
  /** What washing or wearing makes of a length. */
  factor: { min: 0.2, max: 5, unit: "times" },
  toleranceCm: { min: 0.01, max: 100, unit: "cm" },
  /** A doll's wrist, a hall's carpet. */
  bodyCm: { min: 0.1, max: 1_000, unit: "cm" },
  finishedCm: { min: 0.1, max: 2_000, unit: "cm" },
  /** Worked to a ruler: none, or a long scarf. */
  workedCm: { min: 0, max: 2_000, unit: "cm" },
  /** Taken or added: edgings, seams, ease, and whatever a pasted table does not explain. */
  addedCm: { min: -2_000, max: 2_000, unit: "cm" },
  /** Share of a body measurement, as half a bust. */
  share: { min: 0.01, max: 10, unit: "times" },
  /** How often a term counts. */
  times: { min: -1_000, max: 1_000, unit: "times" },
  count: { min: 0, max: 100_000, unit: "" },
  grams: { min: 0.01, max: 20_000, unit: "g" },
  ballMetres: { min: 0.5, max: 20_000, unit: "m" },
  /** Rope to sewing thread. */
  metresPer100g: { min: 1, max: 50_000, unit: "m in 100 g" },
  hours: { min: 0, max: 10_000, unit: "hours" },
} as const satisfies Readonly<Record<string, PlausibleRange>>;

export function isPlausible(value: number, { min, max }: PlausibleRange): boolean {
  return value >= min && value <= max;
}

/** `between 0.5 and 200 cm`. @param unit the reader's, for lengths. */
export function rangeText({ min, max, unit }: PlausibleRange, reader: LengthUnit = "cm"): string {
  if (unit !== "cm") return `between ${min} and ${max}${unit === "" ? "" : ` ${unit}`}`;
  return `between ${inUnit(min, reader)} and ${inUnit(max, reader)} ${reader}`;
}

/** Rounded inwards to three digits, so that the displayed limits are accepted. */
function inUnit(cm: number, unit: LengthUnit): number {
  if (unit === "cm" || cm === 0) return cm;
  const exact = fromCm(cm, unit);
  const step = 10 ** (Math.floor(Math.log10(Math.abs(exact))) - 2);
  return Number(
    (Math.abs(exact) < 1 ? Math.ceil(exact / step) * step : Math.trunc(exact / step) * step).toPrecision(3),
  );
}
