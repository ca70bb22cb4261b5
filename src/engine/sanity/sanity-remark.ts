import type { Fault, Size } from "../pattern";

export type SanityKind =
  | "sleeve-and-armhole"
  | "neck-and-head"
  | "ease-and-stretch"
  | "step-and-body"
  | "coarse-repeat"
  | "gauge"
  | "size-order";

/** Something that a technical editor would ask about. It may be intended, so it is a remark and not a fault. */
export interface SanityRemark extends Fault {
  readonly kind: SanityKind;
  /** The size concerned, if there is one: the one furthest off, or the larger size of a step. */
  readonly size?: string;
}

/** Formats a length in cm, with its unit. */
export type FormatLength = (cm: number) => string;

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
