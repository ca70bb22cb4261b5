/** How the numbers of a change are to be read: `sign` for lengths whose sign says whether they add or take. */
export type ChangeUnit = "stitches" | "rows" | "cm" | "sign" | "none";

/** One thing that is otherwise in a later pattern. */
export interface PatternChange {
  /** By ids: `grading.body.m`, `fabrics.lace.gauge.stitches`. */
  readonly path: string;
  readonly what: string;
  /** The size's label; left out where it is no matter of one size. */
  readonly size?: string;
  readonly unit: ChangeUnit;
  /** Null where it was not there before; both null where a text or a list was rewritten. */
  readonly was: number | string | null;
  readonly becomes: number | string | null;
}
