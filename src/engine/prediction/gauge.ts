import type { CountedGauge, Gauge, Swatch } from "../pattern";

/** How a fabric grows: length after blocking ÷ before, with the relative standard uncertainty along the rows. */
export interface Growth {
  readonly across: number;
  readonly along: number;
  readonly sdAlong: number;
}

/** @returns the gauge that a swatch shows. */
export function swatchGauge(swatch: CountedGauge): Gauge {
  return { stitchesPerCm: swatch.stitches / swatch.acrossCm, rowsPerCm: swatch.rows / swatch.alongCm };
}

/**
 * The swatch of a fabric that counts: the one marked `used`, else one taken on the garment, else the last washed one,
 * else the last. Swatches that are set aside do not count.
 *
 * @param swatches a tester's swatches of any fabrics, in the order they were made.
 * @returns the swatch, undefined where the fabric counts as without one.
 * @see docs/method.md#prediction.
 */
export function chooseSwatch(swatches: readonly Swatch[], fabric: string): Swatch | undefined {
  const counted = swatches.filter((swatch) => swatch.fabric === fabric && swatch.decision !== "set-aside");
  return (
    counted.findLast(({ used }) => used === true) ??
    counted.findLast(({ on }) => on === "garment") ??
    counted.findLast(({ washed }) => washed) ??
    counted.at(-1)
  );
}
