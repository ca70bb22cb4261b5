import type { VarianceFit } from "../../variance-components";
import { fitGapSurface } from "../model/fit-gap-surface";
import type { Candidate } from "./candidate";
import { tryCandidates, type CausedFit, type CauseTask, type Trial, type Weighed } from "./try-candidates";

/** Evidence above which a cause is named (docs/method.md#causes; by calibration: on calls with nothing wrong, under one in ten). */
const PAYS = 0.6;
/** What every further one keeps beside the others: several wrong inputs are less likely, and one too many spoils sound cells. */
const PAYS_BESIDE_OTHERS = 2;
/**
 * Log odds against a kind of cause where cells are averaged; a kind's candidates share its odds alike. By calibration: less
 * lets lucky causes move sound cells, more shrinks a lone wrong cell away.
 */
const ODDS_AGAINST_A_KIND = 1;
const MOST_CAUSES = 3;
/** Rivals are candidates within this of a cause's evidence. */
const RIVAL = 2;

/** A model that was looked at, with its log weight against the model without causes. */
export interface WeighedModel extends CausedFit {
  readonly logWeight: number;
}

export interface FoundCause extends Weighed {
  readonly rivals: readonly (Weighed & { readonly tied: boolean })[];
}

export interface CauseSearch {
  /** The model with every cause that pays. */
  readonly fit: VarianceFit;
  /** Best first; cause i is the i-th of the fit's. */
  readonly found: readonly FoundCause[];
  /** Every model to average cells over, each once. */
  readonly models: readonly WeighedModel[];
}

/**
 * The causes that pay: the best is added while it does, three at most; then each is looked for anew beside the others, and
 * those stay that pay beside the others too.
 *
 * @param none the model without causes.
 * @see docs/method.md#causes.
 */
export function searchCauses(task: CauseTask, none: VarianceFit): CauseSearch {
  const visited: CausedFit[] = [{ causes: [], fit: none }];
  let found = addWhilePaying(task, visited);
  if (found.length > 1) found = lookAnew(task, { visited, found });
  found = found
    .toSorted((left, right) => right.evidence - left.evidence)
    .filter(({ evidence }, at) => at === 0 || evidence > PAYS_BESIDE_OTHERS);
  const fit =
    found.length === 0
      ? none
      : fitWith(
          task,
          found.map(({ candidate }) => candidate),
          none,
        );
  return { fit, found, models: weighedOnce(visited, none) };
}

function addWhilePaying(task: CauseTask, visited: CausedFit[]): FoundCause[] {
  const found: FoundCause[] = [];
  let [base] = visited;
  while (base !== undefined && found.length < MOST_CAUSES) {
    const trials = tryCandidates(task, base);
    visited.push(...trials);
    const [best] = trials;
    if (best === undefined || best.evidence <= PAYS) break;
    found.push(foundCause(best, trials));
    base = best;
  }
  return found;
}

/** What was found first was found without the others: each is dropped and the best in its place taken. */
function lookAnew(
  task: CauseTask,
  { visited, found }: { visited: CausedFit[]; found: readonly FoundCause[] },
): FoundCause[] {
  let kept = [...found];
  for (const cause of found) {
    const others = kept.filter((other) => other !== cause);
    const causes = others.map(({ candidate }) => candidate);
    const base = { causes, fit: fitWith(task, causes, visited[0]?.fit) };
    const trials = tryCandidates(task, base);
    visited.push(...trials);
    const [best] = trials;
    kept = kept.flatMap((other) => {
      if (other !== cause) return [other];
      return best === undefined || best.evidence <= PAYS ? [] : [foundCause(best, trials)];
    });
  }
  return kept;
}

function fitWith(task: CauseTask, causes: readonly Candidate[], near: VarianceFit | undefined): VarianceFit {
  return fitGapSurface({ ...task, causes, near });
}

function weighedOnce(visited: readonly CausedFit[], none: VarianceFit): WeighedModel[] {
  const seen = new Set<string>();
  return visited.flatMap((model) => {
    const key = model.causes
      .map(({ input }) => [input.kind, input.id, input.direction, input.size].join(" "))
      .toSorted()
      .join("; ");
    if (seen.has(key)) return [];
    seen.add(key);
    const odds = model.causes.reduce((sum, { ofItsKind }) => sum + Math.log(ofItsKind) + ODDS_AGAINST_A_KIND, 0);
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
      .filter(({ evidence, tied }) => tied || evidence >= best.evidence - RIVAL)
      .toSorted((left, right) => right.evidence - left.evidence),
  };
}
