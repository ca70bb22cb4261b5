/** Whole number at an index that the caller knows to be in bounds; −1 otherwise. */
export function indexAt(values: Int32Array, index: number): number {
  return values[index] ?? -1;
}
