import { CM_PER_INCH } from "./length";

/** Width over which a gauge is stated when nothing else is said, cm. */
export const GAUGE_WIDTH_CM = 10;

/** Four inches, the other width that gauges are stated over, cm: 10.16 and not 10. */
export const FOUR_INCHES_CM = 4 * CM_PER_INCH;

/**
 * Gauge over another width.
 *
 * @param gauge `count` stitches or rows in `overCm` cm.
 * @param overCm width wanted, cm.
 * @returns stitches or rows in `overCm` cm.
 */
export function gaugeOver(gauge: { readonly count: number; readonly overCm: number }, overCm = GAUGE_WIDTH_CM): number {
  return (gauge.count / gauge.overCm) * overCm;
}

/**
 * Length of a number of stitches or rows at a gauge.
 *
 * @param count stitches or rows.
 * @param perCm stitches or rows in one cm, above 0.
 * @returns length in cm.
 */
export function lengthOfCount(count: number, perCm: number): number {
  return count / perCm;
}
