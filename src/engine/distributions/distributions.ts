import normal from "@stdlib/stats-base-dists-normal";
import t from "@stdlib/stats-base-dists-t";
import f from "@stdlib/stats-base-dists-f";

/** Quantile of the standard normal distribution. @param probability in (0, 1). */
export function normalQuantile(probability: number): number {
  return normal.quantile(probability, 0, 1);
}

/** Chance that a standard normal value is at most `value`. */
export function normalChance(value: number): number {
  return normal.cdf(value, 0, 1);
}

/** Density of the standard normal distribution. */
export function normalDensity(value: number): number {
  return normal.pdf(value, 0, 1);
}

/**
 * Quantile of Student's t.
 *
 * @param probability in (0, 1).
 * @param degreesOfFreedom above 0.
 */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  return t.quantile(probability, degreesOfFreedom);
}

/** Chance that Student's t with these degrees of freedom is at most `value`. */
export function studentTChance(value: number, degreesOfFreedom: number): number {
  return t.cdf(value, degreesOfFreedom);
}

/**
 * Quantile of the F distribution.
 *
 * @param probability in (0, 1).
 * @param numeratorDegrees degrees of freedom of the numerator, above 0.
 * @param denominatorDegrees degrees of freedom of the denominator, above 0.
 */
export function fQuantile(probability: number, numeratorDegrees: number, denominatorDegrees: number): number {
  return f.quantile(probability, numeratorDegrees, denominatorDegrees);
}

/**
 * Upper tail of the binomial distribution: the probability of at least so many successes.
 *
 * @param successes whole, 0 to `trials`.
 * @param trials whole, 0 or more; few, for the terms are added one by one.
 * @param probability of a success, in [0, 1).
 */
export function binomialUpperTail(successes: number, trials: number, probability: number): number {
  const odds = probability / (1 - probability);
  let term = (1 - probability) ** trials;
  let tail = successes === 0 ? term : 0;
  for (let k = 1; k <= trials; k += 1) {
    term *= ((trials - k + 1) / k) * odds;
    if (k >= successes) tail += term;
  }
  return tail;
}
