/** An effect that all readings of one block share: reading i changes by `weights[i]` per unit of it. */
export interface BlockEffect {
  readonly weights: Float64Array;
  /** The part of its variance that is known. */
  readonly knownVariance: number;
  /** Which standard deviation's square adds to the known part; null where all of it is known. */
  readonly sd: number | null;
}

/** Readings that share effects: a tester, a batch, a trial. Blocks are independent given the cells. */
export interface Block {
  readonly values: Float64Array;
  /** Cell of each reading, counted in the block's group. */
  readonly cells: Int32Array;
  /** Known variance of each reading's own error, beside the residual's. */
  readonly knownVariances: Float64Array;
  /** Share of the residual's variance that is each reading's own, from 0 to 1. */
  readonly residualShares: Float64Array;
  readonly effects: readonly BlockEffect[];
}

/** Blocks whose readings lie in the same cells and in no others: the testers of a size. */
export interface Group {
  readonly cells: number;
  readonly blocks: readonly Block[];
}

/** The data. Standard deviations are identified by their index in the list that is fitted. */
export interface Readings {
  readonly groups: readonly Group[];
  /** Standard deviation of each reading's own error; null where all of it is known. */
  readonly residualSd: number | null;
}

/** One column that cells have in common: a fixed effect, or a random one of a known or a fitted variance. */
export type SharedColumn =
  | { readonly kind: "fixed" }
  | { readonly kind: "known"; readonly variance: number }
  | { readonly kind: "fitted"; readonly sd: number };

/** Weights of a group's cells on the shared columns: those of cell c are at `starts[c]` up to, not including, `starts[c + 1]`. */
export interface CellRows {
  readonly cells: number;
  readonly starts: Int32Array;
  readonly columns: Int32Array;
  readonly weights: Float64Array;
}

/** The linear model of the cells: shared columns and, if `cellSd` is set, a deviation of each cell. */
export interface Surface {
  readonly columns: readonly SharedColumn[];
  /** The cells of each group. */
  readonly rows: readonly CellRows[];
  readonly cellSd: number | null;
}

/** Log density of a log standard deviation, up to a constant. */
export type SdPrior = (
  | { readonly kind: "none" }
  | { readonly kind: "half-normal"; readonly scale: number }
  | { readonly kind: "log-normal"; readonly median: number; readonly logSd: number }
) & {
  /** What other data say of it: log density −½ · weight · (log sd − `mean`)² beside the above. */
  readonly known?: LogSdKnowledge;
};

/** A normal approximation of what data say of a log standard deviation. */
interface LogSdKnowledge {
  /** Natural logarithm of the standard deviation, in its own unit. */
  readonly mean: number;
  /** One over the variance of the logarithm; 0 says nothing. */
  readonly weight: number;
}
