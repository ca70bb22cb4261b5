import type { Swatch } from "../pattern";
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
export function swatchUncertainty(swatch: Swatch): GaugeUncertainty {
  return {
    stitches: relativeUncertainty(swatch.stitches, swatch.acrossCm),
    rows: relativeUncertainty(swatch.rows, swatch.alongCm),
  };
}

function relativeUncertainty(count: number, widthCm: number): number {
  return combinedUncertainty([
    { derivative: 1 / count, standardUncertainty: rectangularUncertainty(readingStep(count) / 2) },
    { derivative: 1 / widthCm, standardUncertainty: rectangularUncertainty(TAPE_HALF_WIDTH_CM) },
  ]);
}
