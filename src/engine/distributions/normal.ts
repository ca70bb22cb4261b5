import normal from "@stdlib/stats-base-dists-normal";

/** Quantile of the standard normal distribution. @param probability in (0, 1). */
export function normalQuantile(probability: number): number {
  return normal.quantile(probability, 0, 1);
}

/** Chance that a standard normal value is at most `value`. */
export function normalChance(value: number): number {
  return normal.cdf(value, 0, 1);
}
