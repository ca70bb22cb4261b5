import type { CallDocument } from "../../pattern";
import { chooseSwatch, statedGauge, swatchGauge, type GaugeUncertainty } from "../../prediction";

/** Testers' own spread of gauge until the call shows it, relative (docs/method.md#gap-model; common practice, no source). */
const USUAL_SPREAD = 0.05;
/** How many testers the usual spread counts as beside those of the call. */
const USUAL_WEIGHT = 4;
/** No single swatch counts as further off than this: it is then more likely a slip. */
const FURTHEST = 0.2;

/**
 * By how much testers' gauges differ from the stated one in each fabric, so as to say how uncertain the gauge of a tester
 * without a swatch is.
 *
 * @returns relative root mean square by fabric and direction: the usual spread, drawn toward the call's own swatches.
 */
export function gaugeSpread({ pattern, testers }: CallDocument): ReadonlyMap<string, GaugeUncertainty> {
  return new Map(
    pattern.fabrics.map((fabric) => {
      const stated = statedGauge(fabric);
      const gauges = testers.flatMap(({ swatches }) => {
        const swatch = chooseSwatch(swatches, fabric.id);
        return swatch ? [swatchGauge(swatch)] : [];
      });
      return [
        fabric.id,
        {
          stitches: spread(gauges.map(({ stitchesPerCm }) => stitchesPerCm / stated.stitchesPerCm - 1)),
          rows: spread(gauges.map(({ rowsPerCm }) => rowsPerCm / stated.rowsPerCm - 1)),
        },
      ];
    }),
  );
}

function spread(deviations: readonly number[]): number {
  const squares = deviations.map((deviation) => Math.min(Math.abs(deviation), FURTHEST) ** 2);
  const sum = squares.toSorted((left, right) => left - right).reduce((total, square) => total + square, 0);
  return Math.sqrt((USUAL_WEIGHT * USUAL_SPREAD ** 2 + sum) / (USUAL_WEIGHT + squares.length));
}
