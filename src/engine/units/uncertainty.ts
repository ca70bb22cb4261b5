/**
 * Standard uncertainty of a reading that lies anywhere within ± a half-width with equal chance.
 *
 * @param halfWidth half-width of the interval, any unit, at least 0.
 * @returns halfWidth ÷ √3, same unit.
 * @see JCGM 100:2008 (GUM), 4.3.7.
 */
export function rectangularUncertainty(halfWidth: number): number {
  return halfWidth / Math.sqrt(3);
}

/**
 * Combined standard uncertainty of a result whose inputs are uncorrelated.
 *
 * @param parts for each input its standard uncertainty and the result's derivative by it.
 * @returns standard uncertainty, in the unit of the result.
 * @see JCGM 100:2008 (GUM), 5.1.2, equation 10.
 */
export function combinedUncertainty(
  parts: readonly { readonly derivative: number; readonly standardUncertainty: number }[],
): number {
  let variance = 0;
  for (const { derivative, standardUncertainty } of parts) variance += (derivative * standardUncertainty) ** 2;
  return Math.sqrt(variance);
}

const STEPS = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 10, 1 / 16, 1 / 20, 1 / 100, 1 / 1000] as const;

/**
 * Coarsest usual step that a counted number can have been read in: 14 shows whole stitches, 14.5 halves, 14.25 quarters.
 *
 * @param count number as read, such as stitches in a swatch.
 * @returns step, in the unit of `count`; a thousandth where none fits.
 * @see docs/method.md#uncertainty-of-a-prediction.
 */
export function readingStep(count: number): number {
  return STEPS.find((step) => isWholeMultiple(count, step)) ?? 1 / 1000;
}

function isWholeMultiple(value: number, step: number): boolean {
  const ratio = value / step;
  return Math.abs(ratio - Math.round(ratio)) < 1e-6;
}
