/** Whole number at an index that the caller knows to lie inside; −1 outside. */
export function indexAt(values: Int32Array, index: number): number {
  return values[index] ?? -1;
}
