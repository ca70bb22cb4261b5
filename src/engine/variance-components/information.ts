import type { LowRank } from "./low-rank";

/** Information of a group's readings about its cells: log density = const − ½(gᵀ·precision·g − 2·gᵀ·right), g the cells. */
export interface GroupInformation {
  readonly cells: number;
  readonly precision: Float64Array;
  /** The same precision, where the blocks have few effects beside the cells; null where the whole matrix is less work. */
  readonly lowRank: LowRank | null;
  readonly right: Float64Array;
  /** Derivatives by the variance of each block-level standard deviation, undefined for the others. */
  readonly precisionSlopes: readonly (Float64Array | undefined)[];
  readonly rightSlopes: readonly (Float64Array | undefined)[];
}

/** Information of all readings about all cells, with the blocks' own effects integrated out. */
export interface Information {
  readonly groups: readonly GroupInformation[];
  readonly readings: number;
  /** Σ over blocks of yᵀV⁻¹y + log|V|. */
  readonly constant: number;
  /** Derivatives by the variances of Σ log|V| and of Σ yᵀV⁻¹y. */
  readonly traceSlopes: Float64Array;
  readonly squareSlopes: Float64Array;
}
