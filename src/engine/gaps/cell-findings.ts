import { normalQuantile } from "../distributions";
import type { PatternDocument } from "../pattern";
import type { Cell, Verdict } from "./gaps-output";
import { mixtureChance, mixtureMoments, mixtureQuantile, type MixturePart } from "./model/mixture";
import { settling } from "./testers-to-settle";
import { isSettled, verdictOf } from "./verdict";

/** Ends of the 90 % interval. */
const LOWER = 0.05;
const UPPER = 0.95;

export interface CellEstimate {
  readonly parts: readonly MixturePart[];
  readonly reports: number;
  /** Variance in the last fit with 0, 1, 2, … more testers of the size who measure it, tolerances². */
  readonly variancesWithMore: readonly number[];
  /** Chance that a tester measures what they are asked to. */
  readonly chanceReported: number;
}

/**
 * The results for each cell.
 *
 * @param estimates of cell (size s, measurement p) at `s * measurements + p`, in tolerances.
 * @returns cells through sizes, in each through measurements; lengths in cm.
 * @see docs/method.md#averaging-over-causes and docs/method.md#verdicts.
 */
export function cellFindings(pattern: PatternDocument, estimates: readonly CellEstimate[]): Cell[] {
  const quantile = normalQuantile(UPPER);
  return pattern.sizes.flatMap((size, s) =>
    pattern.measurements.flatMap((measurement, p) => {
      const estimate = estimates[s * pattern.measurements.length + p];
      if (estimate === undefined) return [];
      const { parts, reports } = estimate;
      const tolerance = measurement.toleranceCm;
      const { mean, sd } = mixtureMoments(parts);
      const chanceOff = chanceBeyondOne(parts);
      const verdict = verdictOf({ gap: mean, tolerance: 1, chanceOff });
      return [
        {
          size: size.id,
          measurement: measurement.id,
          reports,
          gapCm: mean * tolerance,
          standardErrorCm: sd * tolerance,
          lowCm: mixtureQuantile(parts, LOWER, -quantile) * tolerance,
          highCm: mixtureQuantile(parts, UPPER, quantile) * tolerance,
          chanceOff,
          verdict,
          ...(isSettled(verdict)
            ? { testersToSettle: null, chanceWithThree: null }
            : settling({ ...estimate, mean, variance: sd ** 2 })),
        },
      ];
    }),
  );
}

/** The verdict on a gap in tolerances. */
export function mixtureVerdict(parts: readonly MixturePart[]): Verdict {
  return verdictOf({ gap: mixtureMoments(parts).mean, tolerance: 1, chanceOff: chanceBeyondOne(parts) });
}

/** Chance that the gap is beyond one tolerance, either way. */
function chanceBeyondOne(parts: readonly MixturePart[]): number {
  const beyond = mixtureChance(parts, -1) + 1 - mixtureChance(parts, 1);
  return Math.min(1, Math.max(0, beyond));
}
