import type { VarianceFit } from "../../variance-components";
import { tryCandidates, type CausedFit, type CauseTask, type Trial, type Weighed } from "./try-candidates";

/** Evidence above which a cause is named (design 4.6: about 1, by calibration). */
const PAYS = 1;
const MOST_CAUSES = 3;
/** A cause of this evidence weighs as much as none where cells are averaged: so many are tried that luck has a say (by calibration). */
const BREAK_EVEN = 2;
/** Rivals are candidates within this of a cause's evidence. */
const RIVAL = 2;

/** A model that was looked at: its causes, and its log weight against the model without any. */
export interface WeighedModel extends CausedFit {
  readonly logWeight: number;
}

export interface FoundCause extends Weighed {
  readonly rivals: readonly (Weighed & { readonly tied: boolean })[];
}

export interface CauseSearch {
  /** The model with every cause that pays. */
  readonly fit: VarianceFit;
  /** Best first; cause i is the i-th of `causes` in the fit. */
  readonly found: readonly FoundCause[];
  /** Every model to average cells over. */
  readonly models: readonly WeighedModel[];
}

/**
 * The causes that pay: the best is added while it does, three at most; then each is asked again in the others' presence.
 *
 * @param none the model without causes.
 * @see design 4.6.
 */
export function searchCauses(task: CauseTask, none: VarianceFit): CauseSearch {
  let base: WeighedModel = { causes: [], fit: none, logWeight: 0 };
  let found: FoundCause[] = [];
  const models: WeighedModel[] = [base];
  while (found.length < MOST_CAUSES) {
    const trials = tryCandidates(task, base);
    models.push(...trials.map((trial) => weighed(base, trial)));
    const [best] = trials;
    if (best === undefined || best.evidence <= PAYS) break;
    found = [...found, foundCause(best, trials)];
    base = weighed(base, best);
  }
  return { fit: base.fit, found, models };
}

function weighed(base: WeighedModel, { causes, fit, evidence }: Trial): WeighedModel {
  return { causes, fit, logWeight: base.logWeight + evidence - BREAK_EVEN };
}

function foundCause(best: Trial, trials: readonly Trial[]): FoundCause {
  const rivals = trials.flatMap((trial) => [
    ...(trial === best ? [] : [{ candidate: trial.candidate, evidence: trial.evidence, tied: false }]),
    ...trial.tied.map((other) => ({ ...other, tied: trial === best })),
  ]);
  return {
    candidate: best.candidate,
    evidence: best.evidence,
    rivals: rivals
      .filter(({ evidence, tied }) => tied || evidence >= best.evidence - RIVAL)
      .toSorted((left, right) => right.evidence - left.evidence),
  };
}
