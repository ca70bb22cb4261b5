import { at, indexAt } from "../linear-algebra";
import { answerChance, logisticDensity } from "./answer-chance";
import { explainedValues, type LogitParameters, type PersonPoints, type ScaleAnswers } from "./cumulative-logit";
import type { Quadrature } from "./gauss-hermite";

const MAX_STEPS = 30;
const TOLERANCE = 1e-10;

/**
 * Adaptive Gauss–Hermite points: each person's are laid about the likeliest own value, as wide as the answers leave it
 * open.
 *
 * @see Pinheiro and Bates (1995), Approximations to the log-likelihood function in the nonlinear mixed-effects model.
 */
export function adaptivePoints(given: ScaleAnswers, parameters: LogitParameters, quadrature: Quadrature): PersonPoints {
  const count = quadrature.points.length;
  const persons = given.starts.length - 1;
  const values = new Float64Array(persons * count);
  const logWeights = new Float64Array(persons * count);
  const explained = explainedValues(given, parameters.weights);
  for (let person = 0; person < persons; person += 1) {
    const { mode, sd } = likeliestValue({ given, parameters, explained, person });
    for (let q = 0; q < count; q += 1) {
      const point = at(quadrature.points, q);
      const value = mode + sd * point;
      values[person * count + q] = value;
      logWeights[person * count + q] =
        Math.log(at(quadrature.weights, q)) + Math.log(sd) + (point * point - value * value) / 2;
    }
  }
  return { count, values, logWeights };
}

interface PersonGiven {
  readonly given: ScaleAnswers;
  readonly parameters: LogitParameters;
  readonly explained: Float64Array;
  readonly person: number;
}

/** Newton's method: the logarithm is concave, and its curvature at most that of the prior. */
function likeliestValue({ given, parameters, explained, person }: PersonGiven): { mode: number; sd: number } {
  const { thresholds, personSd } = parameters;
  const [from, to] = [indexAt(given.starts, person), indexAt(given.starts, person + 1)];
  let mode = 0;
  let curvature = 1;
  for (let step = 0; step < MAX_STEPS; step += 1) {
    let slope = -mode;
    curvature = 1;
    for (let i = from; i < to; i += 1) {
      const answer = indexAt(given.answers, i);
      const value = at(explained, i) + personSd * mode;
      const lower = answer === 0 ? -Infinity : at(thresholds, answer - 1) - value;
      const upper = answer === thresholds.length ? Infinity : at(thresholds, answer) - value;
      slope += personSd * answerChance(lower, upper).byValue;
      curvature += personSd ** 2 * (logisticDensity(lower) + logisticDensity(upper));
    }
    const change = slope / curvature;
    mode += change;
    if (Math.abs(change) <= TOLERANCE) break;
  }
  return { mode, sd: 1 / Math.sqrt(curvature) };
}
