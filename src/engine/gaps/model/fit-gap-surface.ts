import { at } from "../../linear-algebra";
import type { PatternDocument } from "../../pattern";
import { fitVarianceComponents, type Information, type SdPrior, type VarianceFit } from "../../variance-components";
import type { Candidate } from "../causes/candidate";
import { findMistakes, type MistakeShares } from "../mistakes/find-mistakes";
import { MISTAKE_PRIORS, type MistakePrior } from "../mistakes/mistake-priors";
import { countMistakes, noMistakes, withMistakes, type Mistakes, type TesterReadings } from "../mistakes/mistakes";
import { START_SDS } from "./gap-sds";
import { gapSurface } from "./gap-surface";

/** Rounds of a fit and of what it says of mistakes; most calls need three. */
const MAX_ROUNDS = 8;
/** No chance of a mistake changes by more in the last round, in a size of this many testers or fewer. */
const SETTLED_CHANCE = 0.01;
const FEW_TESTERS = 20;

/** A fit of the gap model together with the mistakes that it allows for. */
export interface GapFit extends VarianceFit {
  /** The readings with the variances that stand for mistakes. */
  readonly readings: TesterReadings;
  readonly mistakes: Mistakes;
  readonly shares: MistakeShares;
}

/**
 * The gap model with the given causes, with standard deviations by maximum penalised likelihood, and every reading, swatch and
 * tester a mistake with some chance.
 *
 * @param priors of the standard deviations: `gapPriors` of the call.
 * @param warmStart a fit to the same readings, from which the search starts; the usual values where left out.
 * @param gathered information of the readings at face value at the warm start's standard deviations, if already known.
 * @param fittedSds which standard deviations are fitted; all where left out.
 * @param shares chance of a mistake of each kind; estimated where left out.
 * @returns the fit; its `objective` is that of the model with mistakes.
 * @see docs/method.md#mistakes and docs/method.md#priors.
 */
export function fitGapSurface(given: {
  readonly pattern: PatternDocument;
  readonly readings: TesterReadings;
  readonly causes: readonly Candidate[];
  readonly priors: readonly SdPrior[];
  readonly warmStart?: VarianceFit;
  readonly gathered?: Information;
  readonly fittedSds?: readonly number[];
  readonly shares?: MistakeShares;
}): GapFit {
  const { readings: honest } = given;
  const surface = gapSurface(given.pattern, given.causes);
  let mistakes = noMistakes(honest);
  let shares = given.shares ?? expectedShares(honest, mistakes);
  let { warmStart, gathered } = given;
  for (let round = 1; ; round += 1) {
    const readings = withMistakes(honest, mistakes);
    const fit = fitVarianceComponents({
      readings,
      surface,
      start: warmStart?.sds ?? START_SDS,
      gathered,
      priors: given.priors,
      free: given.fittedSds,
    });
    const found = findMistakes({ honest, seen: readings, fit, shares });
    if (round === MAX_ROUNDS || mostChanged(mistakes, found.mistakes) < SETTLED_CHANCE)
      return { ...fit, objective: fit.objective + found.logCorrection, readings, mistakes: found.mistakes, shares };
    mistakes = found.mistakes;
    if (given.shares === undefined) shares = expectedShares(honest, mistakes);
    warmStart = fit;
    gathered = undefined;
  }
}

/** The most likely shares of mistakes by their priors and by what was found. */
function expectedShares(readings: TesterReadings, mistakes: Mistakes): MistakeShares {
  const counts = countMistakes(readings, mistakes);
  const share = ({ mistakes: more, sound }: MistakePrior, { all, wrong }: { all: number; wrong: number }) =>
    (more - 1 + wrong) / (more + sound - 2 + all);
  return {
    reading: share(MISTAKE_PRIORS.reading, counts.reading),
    swatch: share(MISTAKE_PRIORS.swatch, counts.swatch),
    tester: share(MISTAKE_PRIORS.tester, counts.tester),
  };
}

/** The largest change of a chance; one tester of many counts for so much less, as they move their size so much less. */
function mostChanged(before: Mistakes, after: Mistakes): number {
  let most = 0;
  before.forEach((blocks, g) => {
    const weight = Math.min(1, FEW_TESTERS / blocks.length);
    blocks.forEach((block, b) => {
      const found = after[g]?.[b];
      if (found === undefined) return;
      const changed = Math.max(
        Math.abs(block.tester - found.tester),
        difference(block.readings, found.readings),
        difference(block.swatches, found.swatches),
      );
      most = Math.max(most, weight * changed);
    });
  });
  return most;
}

function difference(left: Float64Array, right: Float64Array): number {
  return left.reduce((most, value, index) => Math.max(most, Math.abs(value - at(right, index))), 0);
}
