import type { CallPrior } from "../../pattern";
import type { SdPrior } from "../../variance-components";

/** Index of each standard deviation of the gap model in the list that is fitted. */
export const SD_INDEX = { offset: 0, step: 1, cell: 2, driftAcross: 3, driftAlong: 4, residual: 5 } as const;

/** Their names, in that order. */
export const SPREADS = [
  "offset",
  "step",
  "cell",
  "driftAcross",
  "driftAlong",
  "residual",
] as const satisfies readonly (keyof typeof SD_INDEX)[];

/** The pattern's three, which depend most on the causes in the model. */
export const PATTERN_SDS: readonly number[] = [SD_INDEX.offset, SD_INDEX.step, SD_INDEX.cell];

/**
 * Priors of the standard deviations: pattern and residual in tolerances, drifts as fractions
 * (docs/method.md#gap-model; common practice, no source).
 */
const GAP_PRIORS: readonly SdPrior[] = [
  { kind: "half-normal", scale: 0.8 },
  { kind: "half-normal", scale: 0.5 },
  { kind: "half-normal", scale: 0.4 },
  { kind: "log-normal", median: 0.022, logSd: 0.5 },
  { kind: "log-normal", median: 0.022, logSd: 0.5 },
  { kind: "log-normal", median: 0.5, logSd: 0.5 },
];

/** The same with what the designer's earlier calls showed; the very same where they showed nothing. */
export function gapPriors(earlier: CallPrior | undefined): readonly SdPrior[] {
  if (earlier === undefined || SPREADS.every((spread) => earlier.sds[spread].weight === 0)) return GAP_PRIORS;
  const known = SPREADS.map((spread) => earlier.sds[spread]);
  return GAP_PRIORS.map((prior, index) => {
    const shown = known[index];
    if (shown === undefined || shown.weight === 0) return prior;
    return { ...prior, known: { mean: shown.logSd, weight: shown.weight } };
  });
}

/** Start values of the optimisation. */
export const START_SDS = Float64Array.of(0.4, 0.25, 0.2, 0.022, 0.022, 0.5);
