import type { Measurement, PatternDocument, Size, Tester } from "../pattern";
import { gaugeParts, measure, targetCm } from "./measure";
import { indexPattern, type PatternIndex } from "./pattern-index";
import { gaugeUncertaintyCm, readingSpreadCm } from "./spread";
import { workedStitches } from "./worked-stitches";
import { patternWorking, workedAtOwnGauge, workedAtStatedGauge } from "./working";

/** One measurement of one garment, cm. `acrossCm + alongCm + restCm` is `predictedCm`. */
export interface MeasurementPrediction {
  readonly measurement: string;
  readonly targetCm: number | null;
  readonly designCm: number;
  readonly workedCm: number;
  readonly predictedCm: number;
  readonly standardUncertaintyCm: number;
  readonly spreadCm: number;
  readonly acrossCm: number;
  readonly alongCm: number;
  readonly restCm: number;
}

export interface Prediction {
  readonly measurements: readonly MeasurementPrediction[];
}

interface Asked {
  readonly pattern: PatternDocument;
  readonly size: string;
  readonly tester?: Tester;
}

/**
 * Predicts a garment's measurements: as designed, with the counts a tester worked, and at the tester's gauge.
 *
 * @param pattern a parsed pattern whose counts all have values.
 * @param size id of the size.
 * @param tester a tester of that size; without one worked = predicted = design, and the spread is that of a tester on gauge.
 * @param growths of the tester's call, by fabric: for a tester who did not count their swatch before blocking.
 * @returns measurements in the pattern's order; lengths in cm.
 * @throws {RangeError} for an unknown size or a count without a value, which the documents' checks rule out.
 * @see docs/method.md#prediction; JCGM 100:2008, 5.1.2 for the uncertainty.
 */
export function predict({
  pattern,
  size,
  tester,
  growths,
}: Asked & { readonly growths?: PatternIndex["growths"] }): Prediction {
  const index = indexPattern(pattern, growths);
  const found = pattern.sizes.find(({ id }) => id === size);
  if (found === undefined) throw new RangeError(`unknown size ${size}`);
  return {
    measurements: pattern.measurements.map((measurement) =>
      predictMeasurement(index, { measurement, size: found, tester }),
    ),
  };
}

/**
 * Stitches of each piece of a garment, as the pattern has it or as a tester works it.
 *
 * @returns pieces in the pattern's order, stitches of all copies of each.
 * @throws {RangeError} for a count without a value, which the documents' checks rule out.
 */
export function predictStitches({ pattern, size, tester }: Asked): { piece: string; stitches: number }[] {
  const index = indexPattern(pattern);
  const { used } = workedStitches(index, tester ? workedAtOwnGauge(index, tester) : patternWorking(index, size));
  return pattern.garment.pieces.map(({ id }) => ({
    piece: id,
    stitches: used.reduce((sum, { piece, stitches }) => (piece === id ? sum + stitches : sum), 0),
  }));
}

/** One measurement of `predict`; see there. */
function predictMeasurement(
  index: PatternIndex,
  { measurement, size, tester }: { measurement: Measurement; size: Size; tester?: Tester },
): MeasurementPrediction {
  const design = measure(index, measurement, patternWorking(index, size.id));
  const worked = tester ? measure(index, measurement, workedAtStatedGauge(index, tester)) : design;
  const predicted = tester ? measure(index, measurement, workedAtOwnGauge(index, tester)) : design;
  const standardUncertaintyCm = tester ? gaugeUncertaintyCm(index, predicted, tester) : 0;
  return {
    measurement: measurement.id,
    targetCm: targetCm(measurement, size),
    designCm: design.cm,
    workedCm: worked.cm,
    predictedCm: predicted.cm,
    standardUncertaintyCm,
    spreadCm: readingSpreadCm(predicted, { measurement, standardUncertaintyCm, tester }),
    ...gaugeParts(predicted),
    restCm: predicted.restCm,
  };
}
