import { statedGauge, type CallDocument } from "../../pattern";
import { chooseSwatch, swatchGauge, type GaugeUncertainty } from "../../prediction";

/** Prior spread of gauge between testers, relative (docs/method.md#gap-model; common practice, no source). */
const PRIOR_SPREAD = 0.05;
/** Weight of the prior spread, as a number of testers. */
const PRIOR_WEIGHT = 4;
/** Deviations are limited to this: larger ones are more likely entry errors. */
const MAX_DEVIATION = 0.2;

/**
 * Spread of testers' gauges about the stated one in each fabric, which is the uncertainty of the gauge of a tester
 * without a swatch.
 *
 * @returns relative root mean square by fabric and direction: the prior spread, updated by the call's swatches.
 */
export function gaugeSpread({
  pattern,
  testers,
}: Pick<CallDocument, "pattern" | "testers">): ReadonlyMap<string, GaugeUncertainty> {
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
  const squares = deviations.map((deviation) => Math.min(Math.abs(deviation), MAX_DEVIATION) ** 2);
  const sum = squares.toSorted((left, right) => left - right).reduce((total, square) => total + square, 0);
  return Math.sqrt((PRIOR_WEIGHT * PRIOR_SPREAD ** 2 + sum) / (PRIOR_WEIGHT + squares.length));
}
