import { statedGauge, type CallDocument, type Measurement, type Reading, type Tester } from "../../pattern";
import {
  chooseSwatch,
  gaugeParts,
  indexPattern,
  measure,
  part,
  workedAtOwnGauge,
  type PatternIndex,
  type Split,
} from "../../prediction";
import { isCompared } from "../counted-readings";
import { extraSwatchUncertainty } from "../outliers/extra-swatch-uncertainty";

/** A reading with its expectation before the model is fitted. */
export interface ScoredReading {
  /** Index among the tester's readings. */
  readonly index: number;
  readonly measurement: string;
  readonly girth: boolean;
  readonly cm: number;
  readonly expectation: SourcedExpectation;
}

export interface Expectation {
  readonly cm: number;
  readonly sdCm: number;
}

/** An expectation with the sources of its sd: the reading's own, and those that a tester's readings share. */
export interface SourcedExpectation extends Expectation {
  readonly readingSdCm: number;
  /** Source → what one of its sds makes of the reading, cm, with its sign. */
  readonly sharedCm: ReadonlyMap<string, number>;
}

/** Sds of a score (docs/method.md#outliers): the reading's own, the pattern's, and relative drifts; in tolerances and as fractions. */
const READING_SD = 0.55;
const PATTERN_SD = 1;
const DRIFT_SD = 0.03;
/** Spread of a tester's gauge about the stated one in a fabric without a swatch (docs/method.md#outliers). */
const GAUGE_SD_WITHOUT_SWATCH = 0.05;

/** Distance of a length from what is expected, in wide standard deviations. */
export function scoreOf(cm: number, { cm: expected, sdCm }: Expectation): number {
  return (cm - expected) / sdCm;
}

/**
 * A tester's readings that can be compared, with the expectation of each.
 *
 * @see docs/method.md#outliers.
 */
export function scoredReadings(index: PatternIndex, tester: Tester): ScoredReading[] {
  const expectations = new Map<string, SourcedExpectation>();
  const working = workedAtOwnGauge(index, tester);
  return tester.readings.flatMap((reading, position) => {
    if (!isCompared(tester, reading)) return [];
    const measurement = index.pattern.measurements.find(({ id }) => id === reading.measurement);
    if (measurement === undefined) return [];
    const known = expectations.get(measurement.id);
    const expectation = known ?? expectationOf(index, measure(index, measurement, working), { tester, measurement });
    expectations.set(measurement.id, expectation);
    return [
      { index: position, measurement: measurement.id, girth: measurement.girth ?? false, cm: reading.cm, expectation },
    ];
  });
}

/** Expectation of a measurement, with the wide sds of docs/method.md#outliers. */
export function expectationOf(
  index: PatternIndex,
  split: Split,
  { tester, measurement }: { tester: Tester; measurement: Measurement },
): SourcedExpectation {
  const { acrossCm, alongCm } = gaugeParts(split);
  const readingSdCm = READING_SD * measurement.toleranceCm;
  const sharedCm = new Map([
    [`pattern ${measurement.id}`, PATTERN_SD * measurement.toleranceCm],
    ["drift across", DRIFT_SD * acrossCm],
    ["drift along", DRIFT_SD * alongCm],
  ]);
  for (const [fabric, parts] of split.byFabric) {
    const swatch = chooseSwatch(tester.swatches, fabric);
    const extra = swatch
      ? extraSwatchUncertainty(swatch, statedGauge(part(index.fabrics, fabric)))
      : { stitches: GAUGE_SD_WITHOUT_SWATCH, rows: GAUGE_SD_WITHOUT_SWATCH };
    sharedCm.set(`stitches ${fabric}`, extra.stitches * parts.acrossCm);
    sharedCm.set(`rows ${fabric}`, extra.rows * parts.alongCm);
  }
  return { cm: split.cm, sdCm: Math.hypot(readingSdCm, ...sharedCm.values()), readingSdCm, sharedCm };
}

/** Score of one reading before the model is fitted, in the wide standard deviations of docs/method.md#outliers. */
export function readingScore(call: CallDocument, tester: Tester, reading: Reading): number {
  const index = indexPattern(call.pattern);
  const measurement = index.pattern.measurements.find(({ id }) => id === reading.measurement);
  if (measurement === undefined) throw new RangeError(`unknown measurement ${reading.measurement}`);
  const split = measure(index, measurement, workedAtOwnGauge(index, tester));
  return scoreOf(reading.cm, expectationOf(index, split, { tester, measurement }));
}
