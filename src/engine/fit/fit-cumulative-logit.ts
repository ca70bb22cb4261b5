import { at, cholesky, solveLower, solveUpper, type Matrix } from "../linear-algebra";
import { minimise } from "../variance-components/minimise";
import {
  commonPoints,
  logitLoss,
  splitParameters,
  type LogitModel,
  type LogitParameters,
  type PersonPoints,
  type ScaleAnswers,
} from "./cumulative-logit";
import { gaussHermite } from "./gauss-hermite";
import { adaptivePoints } from "./person-points";

export interface LogitFit extends LogitParameters {
  /** As `LogitModel.priors` orders them. */
  readonly point: Float64Array;
  /** Without priors. */
  readonly logLikelihood: number;
  readonly points: PersonPoints;
  readonly status: "converged" | "stopped";
  readonly evaluations: number;
}

interface FitChoices {
  /** Points of the quadrature over a person's own value: 3 or more, for they are fixed during a search. */
  readonly quadraturePoints: number;
  readonly start: Float64Array;
  /** Largest slope at the end; `TOLERANCE` where left out. */
  readonly tolerance?: number;
}

/** Of the slopes of a log likelihood: far below what moves a shown digit. */
const TOLERANCE = 1e-5;
const MAX_ROUNDS = 10;
/** A round of laying the points anew that gains less changes nothing shown. */
const MIN_GAIN = 1e-7;

/**
 * The likeliest parameters of a cumulative logit, with priors where the model has them.
 *
 * Points of the quadrature are fixed during a search and laid anew after it, until nothing is gained.
 *
 * @see docs/method.md#fit; McCullagh (1980), Regression models for ordinal data.
 */
export function fitCumulativeLogit(given: ScaleAnswers, model: LogitModel, choices: FitChoices): LogitFit {
  const { tolerance = TOLERANCE } = choices;
  const quadrature = gaussHermite(model.hasPersons ? choices.quadraturePoints : 1);
  const pointsAt = (point: Float64Array) =>
    model.hasPersons
      ? adaptivePoints(given, splitParameters(given, model, point), quadrature)
      : commonPoints(quadrature, given.starts.length - 1);
  let point = choices.start;
  let points = pointsAt(point);
  let last = Infinity;
  let evaluations = 0;
  for (let round = 0; ; round += 1) {
    const fixed = points;
    const found = minimise((tried) => finite(logitLoss(given, model, fixed, tried)), point, tolerance);
    point = found.point;
    evaluations += found.evaluations;
    points = pointsAt(point);
    const isSettled = !model.hasPersons || Math.abs(last - found.value) <= MIN_GAIN;
    if (isSettled || round === MAX_ROUNDS) {
      return {
        ...splitParameters(given, model, point),
        ...{ point, points, evaluations, logLikelihood: found.logLikelihood },
        status: found.converged && isSettled ? "converged" : "stopped",
      };
    }
    last = found.value;
  }
}

function finite<Found extends { readonly value: number }>(found: Found): Found | null {
  return Number.isFinite(found.value) ? found : null;
}

const DIFFERENCE = 1e-4;

/**
 * Covariance of the parameters at a fit: the inverse of the curvature, which is found by differences of the exact slopes.
 *
 * @returns null where the curvature is not positive definite.
 */
export function logitCovariance(given: ScaleAnswers, model: LogitModel, fit: LogitFit): Matrix | null {
  const size = fit.point.length;
  const curvature = new Float64Array(size * size);
  for (let j = 0; j < size; j += 1) {
    const slopesAt = (by: number) =>
      logitLoss(
        given,
        model,
        fit.points,
        fit.point.map((value, i) => (i === j ? value + by : value)),
      ).slopes;
    const [above, below] = [slopesAt(DIFFERENCE), slopesAt(-DIFFERENCE)];
    for (let i = 0; i < size; i += 1) curvature[i * size + j] = (at(above, i) - at(below, i)) / (2 * DIFFERENCE);
  }
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < i; j += 1) {
      const mean = (at(curvature, i * size + j) + at(curvature, j * size + i)) / 2;
      curvature[i * size + j] = mean;
      curvature[j * size + i] = mean;
    }
  }
  const factor = cholesky({ rows: size, columns: size, values: curvature });
  if (factor === null) return null;
  const inverse = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) inverse[i * size + i] = 1;
  solveLower(factor, inverse, size);
  solveUpper(factor, inverse, size);
  return { rows: size, columns: size, values: inverse };
}
