import type { PatternDocument } from "../../pattern";
import { fitVarianceComponents, type Readings, type VarianceFit } from "../../variance-components";
import type { Candidate } from "../causes/candidate";
import { GAP_PRIORS, START_SDS } from "./gap-sds";
import { gapSurface } from "./gap-surface";

/**
 * The gap model with the given causes, with standard deviations by maximum penalised likelihood.
 *
 * @param near a fit to the same readings, from which the search starts; the usual values where left out.
 * @param free which standard deviations are fitted; all where left out.
 * @see docs/method.md#priors.
 */
export function fitGapSurface(given: {
  readonly pattern: PatternDocument;
  readonly readings: Readings;
  readonly causes: readonly Candidate[];
  readonly warmStart?: VarianceFit;
  readonly fittedSds?: readonly number[];
}): VarianceFit {
  return fitVarianceComponents({
    readings: given.readings,
    surface: gapSurface(given.pattern, given.causes),
    start: given.warmStart?.sds ?? START_SDS,
    gathered: given.warmStart?.solution.information,
    priors: GAP_PRIORS,
    free: given.fittedSds,
  });
}
