import type { CallDocument, Fabric, Reading, Tester } from "../../pattern";
import {
  chooseSwatch,
  fabricGrowths,
  garmentGaugeUncertainty,
  growthOfTester,
  indexPattern,
  measure,
  statedGauge,
  workedAtOwnGauge,
  type GaugeUncertainty,
  type PatternIndex,
  type Split,
} from "../../prediction";
import { isCounted } from "../counted-readings";
import { WRONG_READING_SD, WRONG_SWATCH_SD, WRONG_TESTER_SD } from "../mistakes/mistake-priors";
import type { SwatchEffect, TesterBlock, TesterReadings } from "../mistakes/mistakes";
import { extraSwatchUncertainty } from "../outliers/extra-swatch-uncertainty";
import { SD_INDEX } from "./gap-sds";
import { gaugeSpread } from "./gauge-spread";

/** Lower bound of a reading's sd, in tolerances: readings that the model fits exactly would otherwise have an unbounded likelihood. */
const MIN_READING_SD = 0.01;

/** One measurement of one tester: the mean of the counted readings minus the prediction at the tester's gauge. */
export interface TesterGap {
  readonly measurement: number;
  readonly toleranceCm: number;
  readonly gapCm: number;
  readonly split: Split;
  /** Whether a person has decided that it counts, or with which value. */
  readonly isSure: boolean;
}

/** A tester's gaps; `size` and `measurement` are indices in the pattern. */
export interface TesterGaps {
  readonly tester: Tester;
  readonly size: number;
  readonly gaps: readonly TesterGap[];
  readonly block: TesterBlock;
}

/**
 * The readings of a call as input of the gap model: in tolerances, one block per tester, sizes as groups of cells.
 *
 * Testers are sorted by id, so that their order in the document does not change any floating-point sum.
 *
 * @returns testers with at least one counted reading, and the model's readings of all sizes.
 * @see docs/method.md#gap-model.
 */
export function gapReadings(call: CallDocument): {
  readonly testers: readonly TesterGaps[];
  readonly readings: TesterReadings;
} {
  const index = indexPattern(call.pattern, fabricGrowths(call));
  const spreads = gaugeSpread(call);
  const sizes = new Map(call.pattern.sizes.map(({ id }, index) => [id, index]));
  const measurements = new Map(call.pattern.measurements.map(({ id }, index) => [id, index]));
  const testers = call.testers
    .toSorted((left, right) => (left.id < right.id ? -1 : 1))
    .flatMap((tester) => {
      const gaps = testerGaps(index, measurements, tester);
      if (gaps.length === 0) return [];
      return [
        { tester, size: sizes.get(tester.size) ?? -1, gaps, block: testerBlock(index, { tester, gaps, spreads }) },
      ];
    });
  const groups = call.pattern.sizes.map((_, size) => ({
    cells: call.pattern.measurements.length,
    blocks: testers.filter((tester) => tester.size === size).map(({ block }) => block),
  }));
  return { testers, readings: { groups, residualSd: SD_INDEX.residual } };
}

function testerGaps(index: PatternIndex, measurements: ReadonlyMap<string, number>, tester: Tester): TesterGap[] {
  const byMeasurement = new Map<number, Reading[]>();
  for (const reading of tester.readings) {
    const position = measurements.get(reading.measurement);
    if (position === undefined || !isCounted(tester, reading)) continue;
    byMeasurement.set(position, [...(byMeasurement.get(position) ?? []), reading]);
  }
  const working = workedAtOwnGauge(index, tester);
  return [...byMeasurement]
    .toSorted(([left], [right]) => left - right)
    .flatMap(([position, readings]) => {
      const measurement = index.pattern.measurements[position];
      if (measurement === undefined) return [];
      const split = measure(index, measurement, working);
      const lengths = readings.map(({ cm }) => cm).toSorted((left, right) => left - right);
      const meanCm = lengths.reduce((sum, cm) => sum + cm, 0) / lengths.length;
      const isSure = readings.every(({ decision }) => decision !== undefined);
      return [{ measurement: position, toleranceCm: measurement.toleranceCm, gapCm: meanCm - split.cm, split, isSure }];
    });
}

interface BlockParts {
  readonly tester: Tester;
  readonly gaps: readonly TesterGap[];
  readonly spreads: ReadonlyMap<string, GaugeUncertainty>;
}

function testerBlock(index: PatternIndex, { tester, gaps, spreads }: BlockParts): TesterBlock {
  const fabrics = index.pattern.fabrics.map((fabric) => ({
    id: fabric.id,
    uncertainty: gaugeUncertaintyOf(tester, fabric, spreads),
  }));
  const effects = [
    ...directionEffects(
      gaps,
      fabrics.map(({ id, uncertainty }) => ({ id, sd: uncertainty.stitches })),
      "acrossCm",
    ),
    ...directionEffects(
      gaps,
      fabrics.map(({ id, uncertainty }) => ({ id, sd: uncertainty.rows })),
      "alongCm",
    ),
    ...growthEffects(index, tester, gaps),
  ];
  return {
    values: Float64Array.from(gaps, ({ gapCm, toleranceCm }) => gapCm / toleranceCm),
    cells: Int32Array.from(gaps, ({ measurement }) => measurement),
    knownVariances: new Float64Array(gaps.length).fill(MIN_READING_SD ** 2),
    effects,
    wrongReadingVariances: Float64Array.from(gaps, ({ isSure }) => (isSure ? 0 : WRONG_READING_SD ** 2)),
    wrongSwatchVariances: Float64Array.from(effects, ({ fabric }) => {
      const swatch = fabric === null ? undefined : chooseSwatch(tester.swatches, fabric);
      return swatch === undefined || swatch.decision === "keep" ? 0 : WRONG_SWATCH_SD ** 2;
    }),
    wrongTesterVariances: Float64Array.from(
      gaps,
      ({ split, toleranceCm }) => (WRONG_TESTER_SD * (split.cm / toleranceCm)) ** 2,
    ),
  };
}

/** The error of a fabric's growth, which moves what was measured while working. */
function growthEffects(index: PatternIndex, tester: Tester, gaps: readonly TesterGap[]): SwatchEffect[] {
  return index.pattern.fabrics.flatMap(({ id }) => {
    const weights = Float64Array.from(gaps, ({ split, toleranceCm }) => (split.growingCm?.get(id) ?? 0) / toleranceCm);
    if (weights.every((weight) => weight === 0)) return [];
    const sd = growthOfTester(index, tester, id)?.sdAlong ?? 0;
    return sd === 0 ? [] : [{ fabric: null, weights, knownVariance: sd * sd, sd: null }];
  });
}

function gaugeUncertaintyOf(
  tester: Tester,
  fabric: Fabric,
  spreads: ReadonlyMap<string, GaugeUncertainty>,
): GaugeUncertainty {
  const swatch = chooseSwatch(tester.swatches, fabric.id);
  if (swatch === undefined) return spreads.get(fabric.id) ?? { stitches: 0, rows: 0 };
  const read = garmentGaugeUncertainty(swatch, tester.blocking);
  const extra = extraSwatchUncertainty(swatch, statedGauge(fabric));
  return { stitches: Math.hypot(read.stitches, extra.stitches), rows: Math.hypot(read.rows, extra.rows) };
}

/** Drift in one direction, and the swatches' own errors by fabric; a single effect for both if there is only one fabric. */
export function directionEffects(
  gaps: readonly TesterGap[],
  fabrics: readonly { readonly id: string; readonly sd: number }[],
  direction: "acrossCm" | "alongCm",
): SwatchEffect[] {
  const byFabric = fabrics
    .map(({ id, sd }) => ({
      fabric: id,
      weights: Float64Array.from(
        gaps,
        ({ split, toleranceCm }) => (split.byFabric.get(id)?.[direction] ?? 0) / toleranceCm,
      ),
      knownVariance: sd * sd,
      sd: null,
    }))
    .filter(({ weights }) => weights.some((weight) => weight !== 0));
  const drift = direction === "acrossCm" ? SD_INDEX.driftAcross : SD_INDEX.driftAlong;
  const [first] = byFabric;
  if (first === undefined) return [];
  if (byFabric.length === 1) return [{ ...first, sd: drift }];
  const all = first.weights.map((_, row) => byFabric.reduce((sum, { weights }) => sum + (weights[row] ?? 0), 0));
  return [...byFabric, { fabric: null, weights: all, knownVariance: 0, sd: drift }];
}
