import type { PatternDocument } from "../../pattern";
import type { Readings, VarianceFit } from "../../variance-components";
import { fitGapSurface } from "../model/fit-gap-surface";
import type { Candidate } from "./candidate";
import { scoreCandidate } from "./score-candidate";
import { areTied } from "./tied";

/** What a search for causes works on. */
export interface CauseTask {
  readonly pattern: PatternDocument;
  readonly readings: Readings;
  readonly candidates: readonly Candidate[];
  /** Whether cell (size s, measurement p), at `s * measurements + p`, has a report. */
  readonly reported: readonly boolean[];
  /** Which standard deviations are fitted anew with a cause in the model. */
  readonly refitted: readonly number[];
}

/** The model with some causes in it. */
export interface CausedFit {
  readonly causes: readonly Candidate[];
  readonly fit: VarianceFit;
}

/** A candidate's evidence beside the causes of a base. */
export interface Weighed {
  readonly candidate: Candidate;
  readonly evidence: number;
}

/** A base with one more cause: the candidate that was refitted, and those that no data of these cells tell from it. */
export interface Trial extends CausedFit, Weighed {
  readonly tied: readonly Weighed[];
}

/** How many candidates, ties counted once, are refitted. */
const MOST_REFITS = 8;
/** A candidate this far behind the best by its score is not refitted: refitting seldom moves one by half as much. */
const FURTHEST_BEHIND = 8;

/**
 * The most likely further causes beside those of a base: all are scored with the standard deviations as they stand, the
 * best few are refitted.
 *
 * @returns trials by evidence, best first; ties by the candidates' order.
 * @see docs/method.md#causes.
 */
export function tryCandidates(task: CauseTask, base: CausedFit): Trial[] {
  const scored = task.candidates
    .filter((candidate) => !base.causes.some((cause) => areTied(cause, candidate, task.reported)))
    .map((candidate) => ({ candidate, evidence: scoreCandidate(base.fit.solution, candidate) - penalty(candidate) }))
    .toSorted(byEvidence);
  return tieGroups(task, scored)
    .map((group) => refit(task, base, group))
    .toSorted(byEvidence);
}

function byEvidence(left: Weighed, right: Weighed): number {
  return right.evidence - left.evidence;
}

/** Many candidates of a kind can win by luck (docs/method.md#causes). */
function penalty({ ofItsKind }: Candidate): number {
  return Math.log(ofItsKind) / 2;
}

function tieGroups({ reported }: CauseTask, scored: readonly Weighed[]): (readonly [Weighed, ...Weighed[]])[] {
  const groups: [Weighed, ...Weighed[]][] = [];
  const least = (scored[0]?.evidence ?? 0) - FURTHEST_BEHIND;
  for (const weighed of scored) {
    const group = groups.find(([first]) => areTied(first.candidate, weighed.candidate, reported));
    if (group) group.push(weighed);
    else if (groups.length < MOST_REFITS && weighed.evidence >= least) groups.push([weighed]);
  }
  return groups;
}

function refit(task: CauseTask, base: CausedFit, [first, ...others]: readonly [Weighed, ...Weighed[]]): Trial {
  const causes = [...base.causes, first.candidate];
  const fit = fitGapSurface({ ...task, causes, near: base.fit, free: task.refitted });
  const evidence = fit.objective - base.fit.objective - penalty(first.candidate);
  const tied = others.map((other) => ({ ...other, evidence: evidence + other.evidence - first.evidence }));
  return { causes, fit, candidate: first.candidate, evidence, tied };
}
