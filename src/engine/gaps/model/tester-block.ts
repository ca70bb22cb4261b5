import { statedGauge, type Fabric, type Tester, type TesterRecord } from "../../pattern";
import {
  chooseSwatch,
  garmentGaugeUncertainty,
  growthOfTester,
  type GaugeUncertainty,
  type PatternIndex,
} from "../../prediction";
import { testerHabits } from "../earlier/tester-habits";
import { WRONG_READING_SD, WRONG_SWATCH_SD, WRONG_TESTER_SD } from "../mistakes/mistake-priors";
import type { SwatchEffect, TesterBlock } from "../mistakes/mistakes";
import { extraSwatchUncertainty } from "../outliers/extra-swatch-uncertainty";
import { SD_INDEX } from "./gap-sds";
import { withHabits } from "./known-tester";
import type { TesterGap } from "./tester-gap";

/** Lower bound of a reading's sd, in tolerances: readings that the model fits exactly would otherwise have an unbounded likelihood. */
export const MIN_READING_SD = 0.01;

/**
 * Share of a reading's error that the tape makes, and that measuring again would make anew; the rest is the garment's own
 * unevenness (docs/method.md#repeated-readings; common practice, no source).
 */
export const TAPE_SHARE = 0.5;

export interface BlockParts {
  readonly tester: Tester;
  readonly gaps: readonly TesterGap[];
  readonly spreads: ReadonlyMap<string, GaugeUncertainty>;
  /** What the tester's own earlier tests showed, if it is known. */
  readonly record?: TesterRecord;
}

/** A tester's readings as a block of the gap model, in tolerances. */
export function testerBlock(index: PatternIndex, { record, ...parts }: BlockParts): TesterBlock {
  const block = unknownTester(index, parts);
  return record === undefined ? block : withHabits(block, testerHabits(record));
}

function unknownTester(index: PatternIndex, { tester, gaps, spreads }: Omit<BlockParts, "record">): TesterBlock {
  const fabrics = index.pattern.fabrics.map((fabric) => ({
    id: fabric.id,
    uncertainty: gaugeUncertaintyOf(tester, fabric, spreads),
  }));
  const effects = [
    ...directionEffects(
      gaps,
      fabrics.map(({ id, uncertainty }) => ({ id, sd: uncertainty.stitches })),
      "stitches",
    ),
    ...directionEffects(
      gaps,
      fabrics.map(({ id, uncertainty }) => ({ id, sd: uncertainty.rows })),
      "rows",
    ),
    ...growthEffects(index, tester, gaps),
    ...garmentEffects(gaps),
  ];
  return {
    values: Float64Array.from(gaps, ({ gapCm, toleranceCm }) => gapCm / toleranceCm),
    cells: Int32Array.from(gaps, ({ measurement }) => measurement),
    knownVariances: new Float64Array(gaps.length).fill(MIN_READING_SD ** 2),
    residualShares: Float64Array.from(gaps, ({ isRepeated }) => (isRepeated ? TAPE_SHARE : 1)),
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
    habits: null,
  };
}

/** The error of a fabric's growth, which moves what was measured while working. */
function growthEffects(index: PatternIndex, tester: Tester, gaps: readonly TesterGap[]): SwatchEffect[] {
  return index.pattern.fabrics.flatMap(({ id }) => {
    const weights = Float64Array.from(gaps, ({ split, toleranceCm }) => (split.growingCm?.get(id) ?? 0) / toleranceCm);
    if (weights.every((weight) => weight === 0)) return [];
    const sd = growthOfTester(index, tester, id)?.sdAlong ?? 0;
    return sd === 0 ? [] : [{ fabric: null, direction: null, weights, knownVariance: sd * sd, sd: null }];
  });
}

/** What a garment's own unevenness does to all readings of the same measurement. */
function garmentEffects(gaps: readonly TesterGap[]): SwatchEffect[] {
  const repeated = new Set(gaps.flatMap(({ measurement, isRepeated }) => (isRepeated ? [measurement] : [])));
  return [...repeated].map((measurement) => ({
    fabric: null,
    direction: null,
    weights: Float64Array.from(gaps, (gap) => (gap.measurement === measurement ? Math.sqrt(1 - TAPE_SHARE) : 0)),
    knownVariance: 0,
    sd: SD_INDEX.residual,
  }));
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
  direction: "stitches" | "rows",
): SwatchEffect[] {
  const movedBy = direction === "stitches" ? "acrossCm" : "alongCm";
  const byFabric = fabrics
    .map(({ id, sd }) => ({
      fabric: id,
      direction,
      weights: Float64Array.from(
        gaps,
        ({ split, toleranceCm }) => (split.byFabric.get(id)?.[movedBy] ?? 0) / toleranceCm,
      ),
      knownVariance: sd * sd,
      sd: null,
    }))
    .filter(({ weights }) => weights.some((weight) => weight !== 0));
  const drift = direction === "stitches" ? SD_INDEX.driftAcross : SD_INDEX.driftAlong;
  const [first] = byFabric;
  if (first === undefined) return [];
  if (byFabric.length === 1) return [{ ...first, sd: drift }];
  const all = first.weights.map((_, row) => byFabric.reduce((sum, { weights }) => sum + (weights[row] ?? 0), 0));
  return [...byFabric, { fabric: null, direction: null, weights: all, knownVariance: 0, sd: drift }];
}
