/** Unit of the numbers of a change: `sign` for lengths whose sign tells whether they add or subtract. */
type ChangeUnit = "stitches" | "rows" | "cm" | "sign" | "none";

/** One difference between two patterns. */
export interface PatternChange {
  /** By ids: `grading.body.m`, `fabrics.lace.gauge.stitches`. */
  readonly path: string;
  readonly what: string;
  /** The size's label; left out if the change is not about one size. */
  readonly size?: string;
  readonly unit: ChangeUnit;
  /** Null if it did not exist before; both null if a text or a list was rewritten. */
  readonly was: number | string | null;
  readonly becomes: number | string | null;
}
