import type { Fault } from "../pattern";

export type SanityKind =
  | "sleeve-and-armhole"
  | "neck-and-head"
  | "ease-and-stretch"
  | "step-and-body"
  | "coarse-repeat"
  | "gauge"
  | "size-order";

/** Something that a technical editor would ask about. It may be meant, so it is a remark and no fault. */
export interface SanityRemark extends Fault {
  readonly kind: SanityKind;
  /** Where one size stands out: the one that is furthest off, or the larger of a step. */
  readonly size?: string;
}

/** Writes a length of so many cm, with its unit. */
export type FormatLength = (cm: number) => string;
