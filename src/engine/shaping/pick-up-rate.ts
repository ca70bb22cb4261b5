/** Stitches per rows along an edge, in lowest terms. */
export interface PickUpRate {
  readonly stitches: number;
  readonly rows: number;
}

const MAX_NUMBER = 8;
/** A simpler rate is preferred if its relative error is at most this: hands are not more precise (common practice, no source). */
const MAX_RELATIVE_ERROR = 0.03;

/**
 * The simplest rate at which stitches picked up along an edge lie flat against its rows.
 *
 * @param gauges stitches in one cm of what is picked up, rows in one cm along the edge; both above 0.
 * @returns the rate with the smallest numbers, none above 8, that is within 3 % of stitches ÷ rows; the nearest rate
 * where none is so near.
 */
export function pickUpRate(gauges: { readonly stitchesPerCm: number; readonly rowsPerCm: number }): PickUpRate {
  const wanted = gauges.stitchesPerCm / gauges.rowsPerCm;
  const rates = ratesBySimplicity().map((rate) => ({ rate, off: Math.abs(rate.stitches / rate.rows / wanted - 1) }));
  const near = rates.find(({ off }) => off <= MAX_RELATIVE_ERROR);
  return (near ?? rates.reduce((best, next) => (next.off < best.off ? next : best))).rate;
}

function ratesBySimplicity(): PickUpRate[] {
  const numbers = Array.from({ length: MAX_NUMBER }, (_, index) => index + 1);
  return numbers
    .flatMap((rows) => numbers.map((stitches) => ({ stitches, rows })))
    .filter(({ stitches, rows }) => greatestDivisor(stitches, rows) === 1)
    .toSorted((left, right) => left.stitches + left.rows - right.stitches - right.rows);
}

/** Greatest common divisor, by Euclid's algorithm. */
export function greatestDivisor(left: number, right: number): number {
  return right === 0 ? left : greatestDivisor(right, left % right);
}
