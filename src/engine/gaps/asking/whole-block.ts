import { at } from "../../linear-algebra";
import type { TesterRecord } from "../../pattern";
import { measure, workedAtOwnGauge, type GaugeUncertainty, type PatternIndex } from "../../prediction";
import { ownVariance, type ReadingToTake } from "../../variance-components";
import { withVariances, type SwatchEffect, type TesterBlock } from "../mistakes/mistakes";
import type { GapFit } from "../model/fit-gap-surface";
import { SD_INDEX } from "../model/gap-sds";
import { MIN_READING_SD, TAPE_SHARE, testerBlock } from "../model/tester-block";
import { readingAsPredicted, type TesterGap } from "../model/tester-gap";
import type { TesterPlace } from "../model/tester-places";

/** Variance of a reading of which nothing is known, tolerances². */
const UNKNOWN_VARIANCE = 1e5;

/** A tester's readings, those that were taken first, and after them one of each measurement that was not. */
export interface WholeBlock {
  readonly gaps: readonly TesterGap[];
  /** How many of them were taken. */
  readonly taken: number;
  readonly block: TesterBlock;
}

/** A tester's block as the fit saw it, and what they left out as readings of which nothing is known. */
export function withLeftOut(
  { gaps: { tester, gaps, block: seen }, size, block: which }: TesterPlace,
  given: {
    index: PatternIndex;
    spreads: ReadonlyMap<string, GaugeUncertainty>;
    fit: Pick<GapFit, "mistakes">;
    record?: TesterRecord;
  },
): WholeBlock {
  const { index, spreads, fit, record } = given;
  const taken = new Set(gaps.map(({ measurement }) => measurement));
  const working = workedAtOwnGauge(index, tester);
  const leftOut = index.pattern.measurements.flatMap((measurement, position) =>
    taken.has(position) || tester.changed?.includes(measurement.id)
      ? []
      : [readingAsPredicted(position, measurement, measure(index, measurement, working))],
  );
  const all = [...gaps, ...leftOut];
  const block = testerBlock(index, { tester, gaps: all, spreads, record });
  const found = fit.mistakes[size]?.[which];
  const effectVarianceOf = ({ fabric, direction }: SwatchEffect) => {
    if (fabric === null) return 0;
    const effect = seen.effects.findIndex((other) => other.fabric === fabric && other.direction === direction);
    return found?.effectVariances[effect] ?? 0;
  };
  return {
    gaps: all,
    taken: gaps.length,
    block: withVariances(block, {
      readingVariances: Float64Array.from(all, (_, row) =>
        row < gaps.length ? (found?.readingVariances[row] ?? 0) : UNKNOWN_VARIANCE,
      ),
      effectVariances: Float64Array.from(block.effects, effectVarianceOf),
    }),
  };
}

/** Taking a reading of the block again, or for the first time. @param sds of the gap model. */
export function readingToTake({ gaps, taken, block }: WholeBlock, row: number, sds: Float64Array): ReadingToTake {
  if (row >= taken) return { row, replacedVariance: UNKNOWN_VARIANCE, freshVariance: 0 };
  const isRepeated = gaps[row]?.isRepeated === true;
  const share = at(block.residualShares, row) / (isRepeated ? TAPE_SHARE : 1);
  const residualVariance = share * at(sds, SD_INDEX.residual) ** 2;
  const own = ownVariance(block, row, at(sds, SD_INDEX.residual) ** 2);
  const ofGarment = isRepeated ? 0 : (1 - TAPE_SHARE) * residualVariance;
  const freshVariance = MIN_READING_SD ** 2 + TAPE_SHARE * residualVariance;
  return { row, replacedVariance: own - ofGarment, freshVariance };
}
