import { GAUGE_WIDTH_CM } from "../units";
import type { Fabric } from "./pattern-document";

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
