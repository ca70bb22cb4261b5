import type { Gauge, CountedGauge } from "../pattern";

const SWATCH_CM = 10;

/** Stitches and rows over ten centimetres, counted to the half. */
export function readSwatch({ stitchesPerCm, rowsPerCm }: Gauge): CountedGauge {
  const toHalf = (count: number) => Math.round(count * 2) / 2;
  return {
    stitches: toHalf(stitchesPerCm * SWATCH_CM),
    acrossCm: SWATCH_CM,
    rows: toHalf(rowsPerCm * SWATCH_CM),
    alongCm: SWATCH_CM,
  };
}
