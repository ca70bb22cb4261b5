import t from "@stdlib/stats-base-dists-t";

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
