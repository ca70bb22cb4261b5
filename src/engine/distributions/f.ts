import f from "@stdlib/stats-base-dists-f";

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
