import type { CountedGauge, Swatch, Tester } from "../pattern";
import { combinedUncertainty, readingStep, rectangularUncertainty } from "../units";

/** A tape is read to the nearest millimetre: half-width of a swatch's width or height, cm. */
const TAPE_HALF_WIDTH_CM = 0.05;

/** Relative standard uncertainties of a gauge, as fractions. */
export interface GaugeUncertainty {
  readonly stitches: number;
  readonly rows: number;
}

/**
 * Uncertainty of a gauge from the reading errors of its swatch.
 *
 * @param swatch counts in stitches and rows, widths in cm.
 * @returns relative standard uncertainty of the stitch and of the row gauge.
 * @see JCGM 100:2008, 5.1.2 and 4.3.7; docs/method.md#uncertainty-of-a-prediction.
 */
export function swatchUncertainty(swatch: CountedGauge): GaugeUncertainty {
  return {
    stitches: relativeUncertainty(swatch.stitches, swatch.acrossCm),
    rows: relativeUncertainty(swatch.rows, swatch.alongCm),
  };
}

/**
 * Relative spread of the difference that another way of blocking makes between a garment's gauge and its swatch's
 * (docs/method.md#growth).
 */
const OTHER_BLOCKING_SD = 0.05;

/** True where both are known to have been blocked, and in different ways: the swatch's gauge then says less of the garment. */
export function isBlockedOtherwise({ blocking }: Pick<Swatch, "blocking">, garment: Tester["blocking"]): boolean {
  return blocking !== undefined && garment !== undefined && blocking !== garment;
}

/**
 * Uncertainty of a garment's gauge by its swatch: the swatch's reading errors, and how it was blocked.
 *
 * @param garment how the garment was blocked.
 * @returns relative standard uncertainties.
 * @see docs/method.md#growth.
 */
export function garmentGaugeUncertainty(swatch: Swatch, garment: Tester["blocking"]): GaugeUncertainty {
  const read = swatchUncertainty(swatch);
  if (!isBlockedOtherwise(swatch, garment)) return read;
  return { stitches: Math.hypot(read.stitches, OTHER_BLOCKING_SD), rows: Math.hypot(read.rows, OTHER_BLOCKING_SD) };
}

function relativeUncertainty(count: number, widthCm: number): number {
  return combinedUncertainty([
    { derivative: 1 / count, standardUncertainty: rectangularUncertainty(readingStep(count) / 2) },
    { derivative: 1 / widthCm, standardUncertainty: rectangularUncertainty(TAPE_HALF_WIDTH_CM) },
  ]);
}
