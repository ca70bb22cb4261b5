import type { Gauge, Swatch } from "../../pattern";
import { swatchGauge, type GaugeUncertainty } from "../../prediction";
import { OUTLIER_SCORE } from "../outliers/entry-errors";

/** Wide relative sd of a swatch's gauge about the stated one: spread between testers and reading errors (common practice, no source). */
const GAUGE_SD = 0.07;

/** Distance of a gauge in one direction from the stated one, in wide standard deviations. */
export function gaugeScore(perCm: number, statedPerCm: number): number {
  return Math.abs(Math.log(perCm / statedPerCm)) / GAUGE_SD;
}

/**
 * Uncertainty of an implausible swatch in addition to its reading errors: its full distance from the stated gauge.
 *
 * A swatch whose ridges were counted as rows therefore gets little weight: a common shift of the tester's readings in that direction
 * is attributed to the tester, not to the pattern. A person's decision to keep it removes the extra uncertainty.
 *
 * @param stated the fabric's gauge.
 * @returns relative standard uncertainties, 0 if the gauge is close to the stated one.
 * @see docs/method.md#outliers.
 */
export function extraSwatchUncertainty(swatch: Swatch, stated: Gauge): GaugeUncertainty {
  const excess = (perCm: number, statedPerCm: number) =>
    swatch.decision === "keep" || gaugeScore(perCm, statedPerCm) <= OUTLIER_SCORE
      ? 0
      : Math.abs(perCm / statedPerCm - 1);
  const gauge = swatchGauge(swatch);
  return {
    stitches: excess(gauge.stitchesPerCm, stated.stitchesPerCm),
    rows: excess(gauge.rowsPerCm, stated.rowsPerCm),
  };
}
