import type { SdPrior } from "../../variance-components";

/** Index of each standard deviation of the gap model in the list that is fitted. */
export const SD_INDEX = { offset: 0, step: 1, cell: 2, driftAcross: 3, driftAlong: 4, residual: 5 } as const;

/** The pattern's three, which depend most on the causes in the model. */
export const PATTERN_SDS: readonly number[] = [SD_INDEX.offset, SD_INDEX.step, SD_INDEX.cell];

/**
 * Priors of the standard deviations: pattern and residual in tolerances, drifts as fractions
 * (docs/method.md#gap-model; common practice, no source).
 */
export const GAP_PRIORS: readonly SdPrior[] = [
  { kind: "half-normal", scale: 0.8 },
  { kind: "half-normal", scale: 0.5 },
  { kind: "half-normal", scale: 0.4 },
  { kind: "log-normal", median: 0.022, logSd: 0.5 },
  { kind: "log-normal", median: 0.022, logSd: 0.5 },
  { kind: "log-normal", median: 0.5, logSd: 0.5 },
];

/** Start values of the optimisation. */
export const START_SDS = Float64Array.of(0.4, 0.25, 0.2, 0.022, 0.022, 0.5);
