import f from "@stdlib/stats-base-dists-f";

/**
 * Quantile of the F distribution.
 *
 * @param probability in (0, 1).
 * @param over degrees of freedom of the numerator, above 0.
 * @param under degrees of freedom of the denominator, above 0.
 */
export function fQuantile(probability: number, over: number, under: number): number {
  return f.quantile(probability, over, under);
}
