import type { ReadCount, ReadGauge } from "./measurement-table";

/** Stitches or rows in one cm. */
export function perCm(gauge: ReadGauge, direction: "stitches" | "rows"): number {
  return (direction === "stitches" ? gauge.stitches : gauge.rows) / gauge.overCm;
}

/**
 * How many times a count must go into a measurement: the whole number that brings times × count ÷ gauge nearest the
 * published lengths, in the sense of least squares over the sizes.
 *
 * @param cm published, by size; sizes that could not be read are passed over.
 * @returns 1 or more.
 */
export function bestMultiple(cm: readonly number[], count: ReadCount, gauge: ReadGauge): number {
  let products = 0;
  let squares = 0;
  cm.forEach((published, index) => {
    const once = (count.values[index] ?? Number.NaN) / perCm(gauge, count.direction);
    if (!Number.isFinite(published * once)) return;
    products += published * once;
    squares += once ** 2;
  });
  return squares === 0 ? 1 : Math.max(1, Math.round(products / squares));
}
