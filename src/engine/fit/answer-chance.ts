/** Chance of an answer and its slopes, of the logarithm. */
export interface AnswerChance {
  readonly chance: number;
  /** By the value that is judged: above 0 where a higher value would make the answer likelier. */
  readonly byValue: number;
  readonly byUpper: number;
  readonly byLower: number;
}

/** The logistic distribution function. */
export function logistic(x: number): number {
  if (x >= 0) return 1 / (1 + Math.exp(-x));
  const odds = Math.exp(x);
  return odds / (1 + odds);
}

/** The logistic density. */
export function logisticDensity(x: number): number {
  const odds = Math.exp(-Math.abs(x));
  return odds / (1 + odds) ** 2;
}

/**
 * Chance that a value with logistic spread lies between two thresholds, which are given less that value.
 *
 * Written as F(upper) · F(−lower) · (1 − exp(lower − upper)), so that nothing cancels far from the middle.
 *
 * @param lower −∞ for the lowest answer. @param upper +∞ for the highest.
 */
export function answerChance(lower: number, upper: number): AnswerChance {
  const below = logistic(upper);
  const above = logistic(-lower);
  const width = -Math.expm1(lower - upper);
  return {
    chance: below * above * width,
    byValue: below - above,
    byUpper: upper === Infinity ? 0 : (1 - below) / (above * width),
    byLower: lower === -Infinity ? 0 : -(1 - above) / (below * width),
  };
}
