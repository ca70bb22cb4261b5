import type { Measurement, Tester } from "../pattern";
import { combinedUncertainty, rectangularUncertainty } from "../units";
import { chooseSwatch } from "./choose-swatch";
import { gaugeParts, type Split } from "./measure";
import { swatchUncertainty } from "./swatch-uncertainty";

/** Testers' own spread of gauge where a fabric has no swatch, relative (docs/method.md#uncertainty-of-a-prediction; common practice, no source). */
const GAUGE_SPREAD = 0.05;
/** How far a garment's fabric drifts from its swatch until a call has estimated it, relative (docs/method.md#uncertainty-of-a-prediction). */
const DRIFT = 0.025;
/** How well a tape is held on a garment, half-width, cm; twice that round a girth that is laid flat (docs/method.md#uncertainty-of-a-prediction). */
const GARMENT_TAPE_HALF_WIDTH_CM = 0.5;

/**
 * Standard uncertainty that the gauge gives a prediction: her swatch's reading errors by fabric and direction, or the
 * testers' own spread of gauge in a fabric that she made no swatch of.
 *
 * @param split the predicted measurement, cm. A relative error of a gauge moves a length by as much of its part.
 * @returns cm.
 * @see JCGM 100:2008, 5.1.2.
 */
export function gaugeUncertaintyCm(split: Split, tester: Tester): number {
  const parts = [...split.byFabric].flatMap(([fabric, { acrossCm, alongCm }]) => {
    const swatch = chooseSwatch(tester.swatches, fabric);
    const relative = swatch ? swatchUncertainty(swatch) : { stitches: GAUGE_SPREAD, rows: GAUGE_SPREAD };
    return [
      { derivative: acrossCm, standardUncertainty: relative.stitches },
      { derivative: alongCm, standardUncertainty: relative.rows },
    ];
  });
  return combinedUncertainty(parts);
}

/**
 * What a reading is expected to scatter by: the gauge's uncertainty, the drift from swatch to garment, and the tape.
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
    { derivative: acrossCm, standardUncertainty: DRIFT },
    { derivative: alongCm, standardUncertainty: DRIFT },
    {
      derivative: isDoubled(measurement, tester) ? 2 : 1,
      standardUncertainty: rectangularUncertainty(GARMENT_TAPE_HALF_WIDTH_CM),
    },
  ]);
}

/** A girth is laid flat and doubled unless all her readings of it say that she went around. */
function isDoubled(measurement: Measurement, tester: Tester | undefined): boolean {
  if (!measurement.girth) return false;
  const readings = tester?.readings.filter((reading) => reading.measurement === measurement.id) ?? [];
  return readings.length === 0 || readings.some(({ way }) => way !== "around");
}
