import type { SdPrior } from "../../variance-components";

/** Where each standard deviation of the gap model stands in the list that is fitted. */
export const GAP_SD = { offset: 0, step: 1, cell: 2, driftAcross: 3, driftAlong: 4, residual: 5 } as const;

/** The pattern's own three, which causes change most. */
export const PATTERN_SDS: readonly number[] = [GAP_SD.offset, GAP_SD.step, GAP_SD.cell];

/**
 * What is expected of the standard deviations before a call: pattern and residual in tolerances, drifts as fractions
 * (docs/method.md#priors; common practice, no source).
 */
export const GAP_PRIORS: readonly SdPrior[] = [
  { kind: "half-normal", scale: 0.8 },
  { kind: "half-normal", scale: 0.5 },
  { kind: "half-normal", scale: 0.4 },
  { kind: "log-normal", median: 0.022, logSd: 0.5 },
  { kind: "log-normal", median: 0.022, logSd: 0.5 },
  { kind: "log-normal", median: 0.5, logSd: 0.5 },
];

/** Where the search for them starts. */
export const START_SDS = Float64Array.of(0.4, 0.25, 0.2, 0.022, 0.022, 0.5);
