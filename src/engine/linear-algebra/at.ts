/**
 * Item of a list of numbers at an index that the caller knows to lie inside.
 *
 * @returns the number; NaN outside, which every check of a result then sees. A throw here would cost the inner loops dear.
 */
export function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}
