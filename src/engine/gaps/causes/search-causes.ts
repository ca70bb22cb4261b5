import { fitGapSurface, type GapFit } from "../model/fit-gap-surface";
import type { Candidate } from "./candidate";
import { tryCandidates, type CausedFit, type CauseTask, type Trial, type ScoredCandidate } from "./try-candidates";

/** Evidence above which a cause is reported (docs/method.md#causes; calibrated so that fewer than one in ten correct patterns gets one). */
const MIN_EVIDENCE = 0.6;
/** Evidence that each further cause needs given the others: several wrong inputs are less likely, and a false one distorts good cells. */
const MIN_EVIDENCE_BESIDE_OTHERS = 2;
/**
 * Prior log odds against a kind of cause in the model average, shared equally among its candidates. Calibrated: a smaller value
 * lets chance causes distort good cells, a larger one shrinks a single wrong cell to nothing.
 */
const LOG_ODDS_AGAINST_KIND = 1;
const MAX_CAUSES = 3;
/** Rivals are candidates whose evidence is at most this much below the cause's. */
const MAX_RIVAL_DEFICIT = 2;

/** A model that was fitted, with its log weight relative to the model without causes. */
export interface WeightedModel extends CausedFit {
  readonly logWeight: number;
}

interface SelectedCause extends ScoredCandidate {
  readonly rivals: readonly (ScoredCandidate & { readonly tied: boolean })[];
}

export interface FoundCause extends SelectedCause {
  /** The model with the other causes alone. */
  readonly without: GapFit;
}

export interface CauseSearch {
  /** The model with all causes that have enough evidence. */
  readonly fit: GapFit;
  /** Best first; cause i is the i-th of the fit's. */
  readonly found: readonly FoundCause[];
  /** All distinct models to average the cells over. */
  readonly models: readonly WeightedModel[];
}

/**
 * Forward selection of causes, three at most, followed by a backward pass that reconsiders each given the others;
 * those with enough evidence given the others are kept.
 *
 * @param none the model without causes.
 * @see docs/method.md#causes.
 */
export function searchCauses(task: CauseTask, none: GapFit): CauseSearch {
  const visited: CausedFit[] = [{ causes: [], fit: none }];
  let selected = forwardPass(task, visited);
  if (selected.length > 1) selected = backwardPass(task, { visited, found: selected });
  selected = selected
    .toSorted((left, right) => right.evidence - left.evidence)
    .filter(({ evidence }, index) => evidence > leastEvidence(index));
  const withCauses = (causes: readonly SelectedCause[]) =>
    causes.length === 0 ? none : fitWith(task, candidatesOf(causes), none);
  const fit = withCauses(selected);
  const found = selected.map((cause) => ({
    ...cause,
    without: withCauses(selected.filter((other) => other !== cause)),
  }));
  return { fit, found, models: distinctModels(visited, none) };
}

/** Evidence above which the index-th cause is reported, best first. */
export function leastEvidence(index: number): number {
  return index === 0 ? MIN_EVIDENCE : MIN_EVIDENCE_BESIDE_OTHERS;
}

function candidatesOf(causes: readonly SelectedCause[]): Candidate[] {
  return causes.map(({ candidate }) => candidate);
}

function forwardPass(task: CauseTask, visited: CausedFit[]): SelectedCause[] {
  const found: SelectedCause[] = [];
  let [base] = visited;
  while (base !== undefined && found.length < MAX_CAUSES) {
    const trials = tryCandidates(task, base);
    visited.push(...trials);
    const [best] = trials;
    if (best === undefined || best.evidence <= MIN_EVIDENCE) break;
    found.push(foundCause(best, trials));
    base = best;
  }
  return found;
}

/** Causes found early were found without the later ones: each is dropped in turn and replaced by the best candidate given the others. */
function backwardPass(
  task: CauseTask,
  { visited, found }: { visited: CausedFit[]; found: readonly SelectedCause[] },
): SelectedCause[] {
  let remaining = [...found];
  for (const cause of found) {
    const others = remaining.filter((other) => other !== cause);
    const causes = candidatesOf(others);
    const base = { causes, fit: fitWith(task, causes, visited[0]?.fit) };
    const trials = tryCandidates(task, base);
    visited.push(...trials);
    const [best] = trials;
    remaining = remaining.flatMap((other) => {
      if (other !== cause) return [other];
      return best === undefined || best.evidence <= MIN_EVIDENCE ? [] : [foundCause(best, trials)];
    });
  }
  return remaining;
}

function fitWith(task: CauseTask, causes: readonly Candidate[], warmStart: GapFit | undefined): GapFit {
  return fitGapSurface({ ...task, causes, warmStart, shares: warmStart?.shares });
}

function distinctModels(visited: readonly CausedFit[], none: GapFit): WeightedModel[] {
  const seen = new Set<string>();
  return visited.flatMap((model) => {
    const key = model.causes
      .map(({ input }) => [input.kind, input.id, input.direction, input.size].join(" "))
      .toSorted()
      .join("; ");
    if (seen.has(key)) return [];
    seen.add(key);
    const odds = model.causes.reduce(
      (sum, { candidatesOfKind }) => sum + Math.log(candidatesOfKind) + LOG_ODDS_AGAINST_KIND,
      0,
    );
    return [{ ...model, logWeight: model.fit.objective - none.objective - odds }];
  });
}

function foundCause(best: Trial, trials: readonly Trial[]): SelectedCause {
  const rivals = trials.flatMap((trial) => [
    ...(trial === best ? [] : [{ candidate: trial.candidate, evidence: trial.evidence, tied: false }]),
    ...trial.tied.map((other) => ({ ...other, tied: trial === best })),
  ]);
  return {
    candidate: best.candidate,
    evidence: best.evidence,
    rivals: rivals
      .filter(({ evidence, tied }) => tied || evidence >= best.evidence - MAX_RIVAL_DEFICIT)
      .toSorted((left, right) => right.evidence - left.evidence),
  };
}
