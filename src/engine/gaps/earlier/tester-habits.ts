import type { TesterRecord } from "../../pattern";

/** Share of the variance of a garment's drift that is its maker's own, in every garment of theirs (common practice, no source). */
export const OWN_DRIFT_SHARE = 0.5;
/** Of testers' drifts, before a record says more: the median of the gap model's prior. */
const USUAL_DRIFT_SD = 0.022;
/** Between testers, in the logarithm of how far their readings lie apart (common practice, no source). */
const TAPE_LOG_SD = 0.25;

/** What is expected of a garment's drift because of who made it, as a fraction, and how exactly that is known. */
export interface DriftHabit {
  readonly offset: number;
  readonly variance: number;
}

/** What a tester's record makes of the usual expectations. */
export interface TesterHabits {
  /** Factor of the variance of their readings' own errors. */
  readonly tapeFactor: number;
  readonly across: DriftHabit;
  readonly along: DriftHabit;
}

/**
 * What is expected of a tester whose earlier tests showed something: each normal about what is usual, updated by the record with
 * its weight.
 *
 * @see docs/method.md#a-testers-record.
 */
export function testerHabits({ tape, across, along }: TesterRecord): TesterHabits {
  const variance = 1 / (1 / TAPE_LOG_SD ** 2 + tape.weight);
  const mean = variance * tape.weight * tape.logRatio;
  return {
    // The mean of exp(2x) of a normal x, over that of somebody unknown.
    tapeFactor: Math.exp(2 * mean + 2 * variance - 2 * TAPE_LOG_SD ** 2),
    across: driftHabit(across),
    along: driftHabit(along),
  };
}

function driftHabit({ offset, weight }: TesterRecord["across"]): DriftHabit {
  const variance = 1 / (1 / (OWN_DRIFT_SHARE * USUAL_DRIFT_SD ** 2) + weight);
  return { offset: variance * weight * offset, variance };
}
