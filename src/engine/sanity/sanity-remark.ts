import type { Fault } from "../pattern";

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
