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
