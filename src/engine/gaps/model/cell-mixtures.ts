import { surfacePosterior } from "../../variance-components";
import type { WeightedModel } from "../causes/search-causes";
import type { MixturePart } from "./mixture";

/** Models with a smaller weight, relative to the best, do not change any displayed number. */
const MIN_SHARE = 1e-3;

/** The models that count, with weights that add up to 1. */
export function averagedModels(models: readonly WeightedModel[]) {
  const best = Math.max(...models.map(({ logWeight }) => logWeight));
  const weighted = models
    .map(({ fit, logWeight }) => ({ fit, share: Math.exp(logWeight - best) }))
    .filter(({ share }) => share >= MIN_SHARE);
  const total = weighted.reduce((sum, { share }) => sum + share, 0);
  return weighted.map(({ fit, share }) => ({ fit, weight: share / total }));
}

/**
 * Each cell's gap in tolerances, averaged over the models by their weights.
 *
 * @returns parts of cell (size s, measurement p) at `s * measurements + p`; weights add up to 1.
 * @see docs/method.md#averaging-over-causes.
 */
export function cellMixtures(models: readonly WeightedModel[]): MixturePart[][] {
  const mixtures: MixturePart[][] = [];
  for (const { fit, weight } of averagedModels(models)) {
    let cell = 0;
    for (const { mean, covariance } of surfacePosterior(fit.solution).groups) {
      mean.forEach((value, index) => {
        const variance = covariance[index * mean.length + index] ?? Number.NaN;
        (mixtures[cell] ??= []).push({ weight, mean: value, sd: Math.sqrt(variance) });
        cell += 1;
      });
    }
  }
  return mixtures;
}
