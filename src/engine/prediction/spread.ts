import type { Measurement, Tester } from "../pattern";
import { combinedUncertainty, rectangularUncertainty } from "../units";
import { chooseSwatch } from "./gauge";
import { gaugeParts, type Split } from "./measure";
import { growthOfTester } from "./growth";
import type { PatternIndex } from "./pattern-index";
import { garmentGaugeUncertainty } from "./swatch-uncertainty";

/** Relative spread of gauge between testers, for a fabric without a swatch (docs/method.md#uncertainty-of-a-prediction; common practice, no source). */
const GAUGE_SPREAD = 0.05;
/** Relative drift of a garment's fabric from its swatch, before a call has estimated it (docs/method.md#uncertainty-of-a-prediction). */
const DRIFT_SD = 0.025;
/** Half-width of the error of a tape measure on a garment, cm; doubled for a girth that is laid flat (docs/method.md#uncertainty-of-a-prediction). */
const GARMENT_TAPE_HALF_WIDTH_CM = 0.5;

/**
 * Standard uncertainty of a prediction due to the gauge: the swatch's reading errors by fabric and direction, or the
 * spread of gauge between testers in a fabric without a swatch; and due to how much the fabric has grown.
 *
 * @param split the predicted measurement, cm. A relative error of a gauge moves a length by as much of its part.
 * @returns cm.
 * @see JCGM 100:2008, 5.1.2.
 */
export function gaugeUncertaintyCm(index: PatternIndex, split: Split, tester: Tester): number {
  const parts = [...split.byFabric].flatMap(([fabric, { acrossCm, alongCm }]) => {
    const swatch = chooseSwatch(tester.swatches, fabric);
    const relative = swatch
      ? garmentGaugeUncertainty(swatch, tester.blocking)
      : { stitches: GAUGE_SPREAD, rows: GAUGE_SPREAD };
    return [
      { derivative: acrossCm, standardUncertainty: relative.stitches },
      { derivative: alongCm, standardUncertainty: relative.rows },
    ];
  });
  const grown = [...(split.growingCm ?? [])].map(([fabric, cm]) => ({
    derivative: cm,
    standardUncertainty: growthOfTester(index, tester, fabric)?.sdAlong ?? 0,
  }));
  return combinedUncertainty([...parts, ...grown]);
}

/**
 * Expected scatter of a reading: the gauge's uncertainty, the drift from swatch to garment, and the tape measure.
 *
 * @param standardUncertaintyCm the prediction's own, cm; 0 for a tester on gauge.
 * @returns standard deviation, cm.
 */
export function readingSpreadCm(
  split: Split,
  {
    measurement,
    standardUncertaintyCm,
    tester,
  }: { measurement: Measurement; standardUncertaintyCm: number; tester?: Tester },
): number {
  const { acrossCm, alongCm } = gaugeParts(split);
  return combinedUncertainty([
    { derivative: 1, standardUncertainty: standardUncertaintyCm },
    { derivative: acrossCm, standardUncertainty: DRIFT_SD },
    { derivative: alongCm, standardUncertainty: DRIFT_SD },
    {
      derivative: isMeasuredDoubled(measurement, tester) ? 2 : 1,
      standardUncertainty: rectangularUncertainty(GARMENT_TAPE_HALF_WIDTH_CM),
    },
  ]);
}

/** A girth is assumed to be laid flat and doubled unless all readings of it were taken around. */
function isMeasuredDoubled(measurement: Measurement, tester: Tester | undefined): boolean {
  if (!measurement.girth) return false;
  const readings = tester?.readings.filter((reading) => reading.measurement === measurement.id) ?? [];
  return readings.length === 0 || readings.some(({ way }) => way !== "around");
}
