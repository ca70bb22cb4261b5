import type { VarianceFit } from "../../variance-components";
import { fitGapSurface } from "../model/fit-gap-surface";
import type { Candidate } from "./candidate";
import { tryCandidates, type CausedFit, type CauseTask, type Trial, type ScoredCandidate } from "./try-candidates";

/** Evidence above which a cause is named (design 4.6: about 1; by calibration: on calls with nothing wrong, under one in ten). */
const MIN_EVIDENCE = 0.6;
/** What every further one keeps beside the others: several wrong inputs are less likely, and one too many spoils sound cells. */
const MIN_EVIDENCE_BESIDE_OTHERS = 2;
/**
 * Log odds against a kind of cause where cells are averaged; a kind's candidates share its odds alike. By calibration: less
 * lets lucky causes move sound cells, more shrinks a lone wrong cell away.
 */
const LOG_ODDS_AGAINST_KIND = 1;
const MAX_CAUSES = 3;
/** Rivals are candidates within this of a cause's evidence. */
const MAX_RIVAL_DEFICIT = 2;

/** A model that was looked at, with its log weight against the model without causes. */
export interface WeightedModel extends CausedFit {
  readonly logWeight: number;
}

export interface FoundCause extends ScoredCandidate {
  readonly rivals: readonly (ScoredCandidate & { readonly tied: boolean })[];
}

export interface CauseSearch {
  /** The model with every cause that pays. */
  readonly fit: VarianceFit;
  /** Best first; cause i is the i-th of the fit's. */
  readonly found: readonly FoundCause[];
  /** Every model to average cells over, each once. */
  readonly models: readonly WeightedModel[];
}

/**
 * The causes that pay: the best is added while it does, three at most; then each is looked for anew beside the others, and
 * those stay that pay beside the others too.
 *
 * @param none the model without causes.
 * @see design 4.6.
 */
export function searchCauses(task: CauseTask, none: VarianceFit): CauseSearch {
  const visited: CausedFit[] = [{ causes: [], fit: none }];
  let found = forwardPass(task, visited);
  if (found.length > 1) found = backwardPass(task, { visited, found });
  found = found
    .toSorted((left, right) => right.evidence - left.evidence)
    .filter(({ evidence }, index) => index === 0 || evidence > MIN_EVIDENCE_BESIDE_OTHERS);
  const fit =
    found.length === 0
      ? none
      : fitWith(
          task,
          found.map(({ candidate }) => candidate),
          none,
        );
  return { fit, found, models: distinctModels(visited, none) };
}

function forwardPass(task: CauseTask, visited: CausedFit[]): FoundCause[] {
  const found: FoundCause[] = [];
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

/** What was found first was found without the others: each is dropped and the best in its place taken. */
function backwardPass(
  task: CauseTask,
  { visited, found }: { visited: CausedFit[]; found: readonly FoundCause[] },
): FoundCause[] {
  let remaining = [...found];
  for (const cause of found) {
    const others = remaining.filter((other) => other !== cause);
    const causes = others.map(({ candidate }) => candidate);
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

function fitWith(task: CauseTask, causes: readonly Candidate[], warmStart: VarianceFit | undefined): VarianceFit {
  return fitGapSurface({ ...task, causes, warmStart });
}

function distinctModels(visited: readonly CausedFit[], none: VarianceFit): WeightedModel[] {
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

function foundCause(best: Trial, trials: readonly Trial[]): FoundCause {
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
