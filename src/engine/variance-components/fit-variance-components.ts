import { at } from "../linear-algebra";
import { gatherInformation } from "./gather-information";
import type { Information } from "./information";
import { likelihoodSlopes } from "./likelihood-slopes";
import { minimise, type Evaluation, type Minimum } from "./minimise";
import { logPrior } from "./sd-prior";
import { solveSurface, type SurfaceSolution } from "./solve-surface";
import { surfacePosterior } from "./surface-posterior";
import type { Readings, SdPrior, Surface } from "./variance-model";

export interface VarianceFit {
  readonly sds: Float64Array;
  readonly solution: SurfaceSolution;
  /** Log likelihood plus the priors' log densities of the log standard deviations. */
  readonly objective: number;
  readonly status: "converged" | "stopped";
  /** Evidence of the status: the largest remaining slope by log standard deviation, and the number of evaluations. */
  readonly largestSlope: number;
  readonly evaluations: number;
}

const TOLERANCE = 1e-6;
const MIN_CURVATURE = 0.1;
/** A decreasing standard deviation without a prior is tried at zero once it is below this share of its start value. */
const NEAR_ZERO = 1e-2;

/**
 * Standard deviations by maximum penalised likelihood; with fixed columns and no priors that is REML.
 *
 * @param start standard deviations to start from, all above 0, in the values' unit.
 * @param priors one a standard deviation.
 * @param free indices of the standard deviations to fit; the others stay at their start values. Default: all.
 * @param gathered information of the readings at the start values, if already known; used if no fitted standard deviation changes it.
 * @returns the fit. A standard deviation without a prior may come out as exactly 0.
 * @throws {RangeError} if the readings do not identify the fixed columns.
 * @see Patterson & Thompson 1971 (REML); Chung et al. 2013 for penalising variances away from zero.
 */
export function fitVarianceComponents(given: {
  readonly readings: Readings;
  readonly surface: Surface;
  readonly start: Float64Array;
  readonly priors: readonly SdPrior[];
  readonly free?: readonly number[];
  readonly gathered?: Information;
}): VarianceFit {
  const { readings, surface, start, priors } = given;
  const task = { readings, surface, start, priors, known: knownInformation(given) };
  let free = given.free ?? priors.map((_, index) => index);
  let sds: Float64Array = task.start;
  let evaluations = 0;
  for (;;) {
    const minimum = search({ ...task, sds, free });
    evaluations += minimum.evaluations;
    sds = withLogs(sds, free, minimum.point);
    const zero = zeroToTry({ ...task, sds, free });
    if (zero === undefined) return fitAt(minimum, evaluations);
    free = free.filter((index) => index !== zero);
    sds = sds.map((value, index) => (index === zero ? 0 : value));
  }
}

interface Task {
  readonly readings: Readings;
  readonly surface: Surface;
  readonly start: Float64Array;
  readonly priors: readonly SdPrior[];
  /** Information of the readings, if no fitted standard deviation changes it. */
  readonly known: Information | null;
}

type Position = Task & { readonly sds: Float64Array; readonly free: readonly number[] };

function knownInformation({
  readings,
  surface,
  start,
  free,
  gathered,
}: {
  readings: Readings;
  surface: Surface;
  start: Float64Array;
  free?: readonly number[];
  gathered?: Information;
}): Information | null {
  const inSurface = new Set(surface.columns.flatMap((column) => (column.kind === "fitted" ? [column.sd] : [])));
  if (surface.cellSd !== null) inSurface.add(surface.cellSd);
  if (free === undefined || free.some((index) => !inSurface.has(index))) return null;
  return gathered ?? gatherInformation(readings, start, { withSlopes: false });
}

function search(position: Position): Minimum<SolvedEvaluation> {
  const start = overFree(position, (index) => Math.log(at(position.sds, index)));
  return minimise((logs) => evaluate(position, logs), start, TOLERANCE);
}

interface SolvedEvaluation extends Evaluation {
  readonly solution: SurfaceSolution;
}

function evaluate(position: Position, logs: Float64Array): SolvedEvaluation | null {
  const sds = withLogs(position.sds, position.free, logs);
  if (sds.some((value) => !Number.isFinite(value))) return null;
  const solution = solveAt(position, sds);
  if (solution === null || !Number.isFinite(solution.logLikelihood)) return null;
  const blockLevel = position.known === null;
  const likelihood = likelihoodSlopes(solution, surfacePosterior(solution, { covariances: blockLevel }), {
    blockLevel,
  });
  return {
    solution,
    value: -(solution.logLikelihood + logPriors(position.priors, sds)),
    slopes: overFree(position, (index) => -at(likelihood.slopes, index) - priorAt(position, sds, index).slope),
    curvatures: overFree(position, (index) => {
      const curvature =
        2 * Math.max(0, at(likelihood.effectiveDegrees, index)) - priorAt(position, sds, index).curvature;
      return Math.max(curvature, MIN_CURVATURE);
    }),
  };
}

function overFree({ free }: Position, valueOf: (index: number) => number): Float64Array {
  const values = new Float64Array(free.length);
  free.forEach((index, which) => {
    values[which] = valueOf(index);
  });
  return values;
}

function priorAt({ priors }: Task, sds: Float64Array, index: number): ReturnType<typeof logPrior> {
  return logPrior(priors[index] ?? { kind: "none" }, at(sds, index));
}

function solveAt({ readings, surface, known }: Task, sds: Float64Array): SurfaceSolution | null {
  return solveSurface(surface, known ?? gatherInformation(readings, sds), sds);
}

function logPriors(priors: readonly SdPrior[], sds: Float64Array): number {
  return priors.reduce((sum, prior, index) => sum + logPrior(prior, at(sds, index)).value, 0);
}

function withLogs(sds: Float64Array, free: readonly number[], logs: Float64Array): Float64Array {
  const next = sds.slice();
  free.forEach((index, at_) => {
    next[index] = Math.exp(at(logs, at_));
  });
  return next;
}

function zeroToTry(position: Position): number | undefined {
  let current: number | undefined;
  return position.free.find((index) => {
    if (position.priors[index]?.kind !== "none" || index === position.readings.residualSd) return false;
    if (at(position.sds, index) > NEAR_ZERO * at(position.start, index)) return false;
    const without = position.sds.map((value, other) => (other === index ? 0 : value));
    current ??= objectiveAt(position, position.sds);
    return objectiveAt(position, without) >= current - TOLERANCE;
  });
}

function objectiveAt(task: Task, sds: Float64Array): number {
  const solution = solveAt(task, sds);
  return solution === null ? Number.NEGATIVE_INFINITY : solution.logLikelihood + logPriors(task.priors, sds);
}

function fitAt(minimum: Minimum<SolvedEvaluation>, evaluations: number): VarianceFit {
  const { solution, value, slopes, converged } = minimum;
  return {
    sds: solution.sds,
    solution,
    objective: -value,
    status: converged ? "converged" : "stopped",
    largestSlope: slopes.reduce((max, slope) => Math.max(max, Math.abs(slope)), 0),
    evaluations,
  };
}
