import { GAUGE_WIDTH_CM } from "../units";
import type { Fabric, Swatch } from "../pattern";

/** Gauge of a fabric: stitches and rows in one cm. */
export interface Gauge {
  readonly stitchesPerCm: number;
  readonly rowsPerCm: number;
}

/** @returns the gauge as the pattern states it. */
export function statedGauge({ gauge }: Fabric): Gauge {
  const overCm = gauge.overCm ?? GAUGE_WIDTH_CM;
  return { stitchesPerCm: gauge.stitches / overCm, rowsPerCm: gauge.rows / overCm };
}

/** @returns the gauge that a swatch shows. */
export function swatchGauge(swatch: Swatch): Gauge {
  return { stitchesPerCm: swatch.stitches / swatch.acrossCm, rowsPerCm: swatch.rows / swatch.alongCm };
}
