/**
 * Usual relative spread of makers' stitch sizes about the stated gauge, √(width × height): 5 % in each direction, the two
 * independent (docs/method.md#yarn; common practice, no source).
 */
const PRIOR_SPREAD = 0.05 / Math.SQRT2;
/** Weight of the usual spread, as a number of makers. */
const PRIOR_WEIGHT = 4;
/** Weight of the stated gauge in their mean, as a number of makers: it may be as far from it as a maker is. */
const STATED_WEIGHT = 1;
/** Larger deviations are more likely entry errors. */
const MAX_DEVIATION = 0.2;

/** How the own gauge of a maker who has not been seen moves the metres that they need, on the log scale. */
export interface MakersGauge {
  /** Expected deviation: above 0 where makers work more loosely than the pattern states. */
  readonly shift: number;
  /** Standard deviation of one more maker about it, with the uncertainty of the shift. */
  readonly spread: number;
  readonly degreesOfFreedom: number;
}

/**
 * Own gauge of a maker whom nobody has seen, from the swatches of those who have been: a normal distribution of unknown
 * mean and variance with a conjugate prior.
 *
 * @param deviations log of each tester's stitch size ÷ the stated one.
 * @see docs/method.md#yarn.
 */
export function makersGauge(deviations: readonly number[]): MakersGauge {
  const limited = deviations
    .map((deviation) => Math.min(MAX_DEVIATION, Math.max(-MAX_DEVIATION, deviation)))
    .toSorted((left, right) => left - right);
  const degreesOfFreedom = PRIOR_WEIGHT + limited.length;
  const weight = STATED_WEIGHT + limited.length;
  const shift = limited.reduce((sum, deviation) => sum + deviation, 0) / weight;
  const squares = limited.reduce((sum, deviation) => sum + (deviation - shift) ** 2, STATED_WEIGHT * shift ** 2);
  const variance = (PRIOR_WEIGHT * PRIOR_SPREAD ** 2 + squares) / degreesOfFreedom;
  return { shift, spread: Math.sqrt(variance * (1 + 1 / weight)), degreesOfFreedom };
}
