import { surfacePosterior, type GroupPosterior } from "../../variance-components";
import type { Candidate } from "../causes/candidate";
import type { WeightedModel } from "../causes/search-causes";
import type { GapFit } from "./fit-gap-surface";
import { weightsOf, type MixturePart } from "./mixture";

/** Models with a smaller weight, relative to the best, do not change any displayed number. */
const MIN_SHARE = 1e-3;

/** A model that counts, with the posterior of its cells. */
export interface AveragedModel {
  readonly causes: readonly Candidate[];
  readonly fit: GapFit;
  readonly groups: readonly GroupPosterior[];
  readonly sharedCovariance: Float64Array;
  readonly weight: number;
}

/** The models that count, with weights that add up to 1. */
export function averagedModels(models: readonly WeightedModel[]): AveragedModel[] {
  const weights = weightsOf(
    models.map(({ logWeight }) => logWeight),
    MIN_SHARE,
  );
  return models.flatMap(({ causes, fit }, index) => {
    const weight = weights[index] ?? 0;
    return weight === 0 ? [] : [{ causes, fit, weight, ...surfacePosterior(fit.solution) }];
  });
}

/**
 * Each cell's gap in tolerances, averaged over the models by their weights.
 *
 * @returns parts of cell (size s, measurement p) at `s * measurements + p`; weights add up to 1.
 * @see docs/method.md#averaging-over-causes.
 */
export function cellMixtures(models: readonly AveragedModel[]): MixturePart[][] {
  const mixtures: MixturePart[][] = [];
  for (const { groups, weight } of models) {
    let cell = 0;
    for (const { mean, covariance } of groups) {
      mean.forEach((value, index) => {
        const variance = covariance[index * mean.length + index] ?? Number.NaN;
        (mixtures[cell] ??= []).push({ weight, mean: value, sd: Math.sqrt(variance) });
        cell += 1;
      });
    }
  }
  return mixtures;
}
