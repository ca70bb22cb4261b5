/**
 * Rounds numbers to a step so that the rounded ones still add up to the rounded total (largest remainder method).
 *
 * @param parts numbers of any sign, any unit.
 * @param step step to round to, same unit, above 0.
 * @returns multiples of the step, in the order of `parts`; each less than one step from its number.
 */
export function roundToSum(parts: readonly number[], step: number): number[] {
  const scaled = parts.map((part) => part / step);
  const floors = scaled.map(Math.floor);
  const total = Math.round(scaled.reduce((sum, part) => sum + part, 0));
  const missing = total - floors.reduce((sum, part) => sum + part, 0);
  const byRemainder = scaled
    .map((part, index) => ({ index, remainder: part - Math.floor(part) }))
    .toSorted((left, right) => right.remainder - left.remainder || left.index - right.index);
  const raised = new Set(byRemainder.slice(0, Math.max(0, missing)).map(({ index }) => index));
  return floors.map((floor, index) => (floor + (raised.has(index) ? 1 : 0)) * step);
}
