/**
 * Number at an index that the caller knows to lie inside.
 *
 * Of Float64Arrays only: one kind of list keeps the inner loops that call it fast.
 *
 * @returns the number; NaN outside, which every check of a result then sees. A throw here would cost the inner loops dear.
 */
export function at(values: Float64Array, index: number): number {
  return values[index] ?? Number.NaN;
}
