import type { Swatch } from "../../pattern";
import { swatchGauge, type Gauge, type GaugeUncertainty } from "../../prediction";
import { SUSPECT_SCORE } from "./slips";

/** Relative sd of a swatch's gauge about the stated one, wide: spread of testers and reading of the swatch (common practice, no source). */
const GAUGE_SD = 0.07;

/** Distance of one direction's gauge from the stated one, in wide standard deviations. */
export function gaugeScore(perCm: number, statedPerCm: number): number {
  return Math.abs(Math.log(perCm / statedPerCm)) / GAUGE_SD;
}

/**
 * How wrong a swatch that counts may be beside its reading errors: as much as it lies off, where that is hard to believe.
 *
 * So a swatch whose ridges were counted as rows is told, and little rests on it: what her readings share in that direction
 * goes to her, not to the pattern. A person's word that it stands takes the doubt away.
 *
 * @param stated the fabric's gauge.
 * @returns relative standard uncertainties, 0 where the gauge is near the stated one.
 * @see docs/method.md#outliers.
 */
export function swatchDoubt(swatch: Swatch, stated: Gauge): GaugeUncertainty {
  const doubt = (perCm: number, statedPerCm: number) =>
    swatch.decision === "keep" || gaugeScore(perCm, statedPerCm) <= SUSPECT_SCORE
      ? 0
      : Math.abs(perCm / statedPerCm - 1);
  const gauge = swatchGauge(swatch);
  return {
    stitches: doubt(gauge.stitchesPerCm, stated.stitchesPerCm),
    rows: doubt(gauge.rowsPerCm, stated.rowsPerCm),
  };
}
