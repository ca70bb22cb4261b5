import { surfacePosterior } from "../../variance-components";
import type { WeighedModel } from "../causes/search-causes";
import type { MixturePart } from "./mixture";

/** Models of less weight than this share of the best's change no number that anyone sees. */
const LEAST_SHARE = 1e-3;

/**
 * Each cell's gap in tolerances, averaged over the models by their weights.
 *
 * @returns parts of cell (size s, measurement p) at `s * measurements + p`; weights add up to 1.
 * @see docs/method.md#averaging-over-causes.
 */
export function cellMixtures(models: readonly WeighedModel[]): MixturePart[][] {
  const best = Math.max(...models.map(({ logWeight }) => logWeight));
  const kept = models
    .map(({ fit, logWeight }) => ({ fit, share: Math.exp(logWeight - best) }))
    .filter(({ share }) => share >= LEAST_SHARE);
  const total = kept.reduce((sum, { share }) => sum + share, 0);
  const mixtures: MixturePart[][] = [];
  for (const { fit, share } of kept) {
    let cell = 0;
    for (const { mean, covariance } of surfacePosterior(fit.solution).groups) {
      mean.forEach((value, at) => {
        const variance = covariance[at * mean.length + at] ?? Number.NaN;
        (mixtures[cell] ??= []).push({ weight: share / total, mean: value, sd: Math.sqrt(variance) });
        cell += 1;
      });
    }
  }
  return mixtures;
}
