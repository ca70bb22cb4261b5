import type { Size } from "../pattern";

/** A size in which something is off, and by how much. */
export interface OffSize {
  readonly size: Size;
  readonly shortCm: number;
}

/** The size that is furthest off, and a text for the others: ` (also in L, XL)`; undefined if none is off. */
export function worstSize<Off extends OffSize>(
  off: readonly Off[],
): { readonly worst: Off; readonly others: string } | undefined {
  const [worst] = off.toSorted((left, right) => right.shortCm - left.shortCm);
  if (worst === undefined) return undefined;
  const others = off.filter((one) => one !== worst).map(({ size }) => size.label);
  return { worst, others: others.length === 0 ? "" : ` (also in ${others.join(", ")})` };
}
