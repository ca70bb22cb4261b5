import type { PatternDocument } from "../../pattern";
import { fitGapSurface, type GapFit } from "../model/fit-gap-surface";
import type { TesterReadings } from "../mistakes/mistakes";
import { gapSurface } from "../model/gap-surface";
import {
  gatherInformation,
  solveSurface,
  type Information,
  type SdPrior,
  type SurfaceSolution,
} from "../../variance-components";
import type { Candidate } from "./candidate";
import { evidenceAt, luckOfMany } from "./score-candidate";
import { areTied } from "./are-tied";

/** The input of a search for causes. */
export interface CauseTask {
  readonly pattern: PatternDocument;
  readonly readings: TesterReadings;
  readonly priors: readonly SdPrior[];
  readonly candidates: readonly Candidate[];
  /** Whether cell (size s, measurement p), at `s * measurements + p`, has a report. */
  readonly reported: readonly boolean[];
  /** Indices of the standard deviations that are refitted when a cause is added. */
  readonly refittedSds: readonly number[];
}

/** The model with some causes in it. */
export interface CausedFit {
  readonly causes: readonly Candidate[];
  readonly fit: GapFit;
}

/** A candidate with its evidence given the causes of the base model. */
export interface ScoredCandidate {
  readonly candidate: Candidate;
  readonly evidence: number;
}

/** The base model with one more cause: the refitted candidate, and those that the data cannot distinguish from it. */
export interface Trial extends CausedFit, ScoredCandidate {
  readonly tied: readonly ScoredCandidate[];
}

/** Maximum number of candidates to refit, ties counted once. */
const MAX_REFITS = 8;
/** A mistake that is this likely changes what the readings say of a candidate. */
const DOUBTED_CHANCE = 0.1;
/** A candidate whose score is this much below the best is not refitted: refitting seldom changes a score by half as much. */
const MAX_SCORE_DEFICIT = 8;

/**
 * The most likely further causes given those of a base model: all are scored at fixed standard deviations, the
 * best few are refitted.
 *
 * @returns trials by evidence, best first; ties by the candidates' order.
 * @see docs/method.md#causes.
 */
export function tryCandidates(task: CauseTask, base: CausedFit): Trial[] {
  const atFaceValue = gatherInformation(task.readings, base.fit.sds, { withSlopes: false });
  const solutions = [base.fit.solution, ...withoutMistakes(task, base, atFaceValue)];
  const scored = task.candidates
    .filter((candidate) => !base.causes.some((cause) => areTied(cause, candidate, task.reported)))
    .map((candidate) => ({
      candidate,
      evidence: Math.max(...solutions.map((solution) => evidenceAt(solution, candidate))),
    }))
    .toSorted(byEvidence);
  return tieGroups(task, scored)
    .map((group) => refit({ ...task, gathered: atFaceValue }, base, group))
    .toSorted(byEvidence);
}

/** What looks like a mistake without a candidate may be what speaks for it: the readings at face value, where any is doubted. */
function withoutMistakes(
  { pattern }: CauseTask,
  { causes, fit }: CausedFit,
  atFaceValue: Information,
): SurfaceSolution[] {
  const isDoubted = fit.mistakes.some((blocks) =>
    blocks.some(({ tester, readings: chances, swatches }) =>
      [tester, ...chances, ...swatches].some((chance) => chance >= DOUBTED_CHANCE),
    ),
  );
  if (!isDoubted) return [];
  const solution = solveSurface(gapSurface(pattern, causes), atFaceValue, fit.sds);
  return solution === null ? [] : [solution];
}

function byEvidence(left: ScoredCandidate, right: ScoredCandidate): number {
  return right.evidence - left.evidence;
}

function tieGroups(
  { reported }: CauseTask,
  scored: readonly ScoredCandidate[],
): (readonly [ScoredCandidate, ...ScoredCandidate[]])[] {
  const groups: [ScoredCandidate, ...ScoredCandidate[]][] = [];
  const minEvidence = (scored[0]?.evidence ?? 0) - MAX_SCORE_DEFICIT;
  for (const scoredCandidate of scored) {
    const group = groups.find(([first]) => areTied(first.candidate, scoredCandidate.candidate, reported));
    if (group) group.push(scoredCandidate);
    else if (groups.length < MAX_REFITS && scoredCandidate.evidence >= minEvidence) groups.push([scoredCandidate]);
  }
  return groups;
}

function refit(
  task: CauseTask & { readonly gathered: Information },
  base: CausedFit,
  [first, ...others]: readonly [ScoredCandidate, ...ScoredCandidate[]],
): Trial {
  const causes = [...base.causes, first.candidate];
  const fit = fitGapSurface({
    ...task,
    causes,
    warmStart: base.fit,
    shares: base.fit.shares,
    fittedSds: task.refittedSds,
  });
  const evidence = fit.objective - base.fit.objective - luckOfMany(first.candidate);
  const tied = others.map((other) => ({ ...other, evidence: evidence + other.evidence - first.evidence }));
  return { causes, fit, candidate: first.candidate, evidence, tied };
}
