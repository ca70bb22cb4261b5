/** Arithmetic mean. @throws {RangeError} for no values. */
export function mean(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError("no values");
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Middle value, the mean of the two middle ones where their number is even. @throws {RangeError} for no values. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((left, right) => left - right);
  const high = sorted[Math.floor(sorted.length / 2)];
  const low = sorted[Math.floor((sorted.length - 1) / 2)];
  if (low === undefined || high === undefined) throw new RangeError("no values");
  return (low + high) / 2;
}

/** Standard deviation about the mean with n − 1 degrees of freedom; 0 of a single value. */
export function standardDeviation(values: readonly number[]): number {
  if (values.length < 2) return 0;
  return Math.sqrt(squaredDeviations(values) / (values.length - 1));
}

/** Sum of squared deviations from the mean. */
export function squaredDeviations(values: readonly number[]): number {
  const middle = mean(values);
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
}
