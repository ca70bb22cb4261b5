import { at, indexAt, type Matrix } from "../linear-algebra";
import { logistic } from "./answer-chance";
import type { Quadrature } from "./gauss-hermite";
import { thresholdCount, thresholdSlopes, thresholdsOf, type ThresholdKind } from "./thresholds";

/** Answers on a scale of ordered steps, those of one person side by side. */
export interface ScaleAnswers {
  /** Steps of the scale. */
  readonly steps: number;
  /** From 0, the lowest, to `steps` − 1. */
  readonly answers: Int32Array;
  /** What each answer depends on, a row an answer. */
  readonly columns: Matrix;
  /** Where each person's answers begin, and, last, their number. */
  readonly starts: Int32Array;
}

/** A normal prior on a parameter; flat where `sd` is infinite. */
export interface NormalPrior {
  readonly mean: number;
  readonly sd: number;
}

/** A cumulative logit (proportional odds): logit P(answer ≤ j) = threshold j − columns · weights − sd · the person's own value. */
export interface LogitModel {
  readonly thresholds: ThresholdKind;
  /** Each person has a value of their own, the same in all their answers. */
  readonly hasPersons: boolean;
  /** One for each parameter: thresholds as `thresholdsOf` takes them, weights of the columns, the logarithm of the persons' sd. */
  readonly priors: readonly NormalPrior[];
}

/** Where each person's own value is looked at: point q of person g at `g * count + q`, standard normal values. */
export interface PersonPoints {
  readonly count: number;
  readonly values: Float64Array;
  /** Logarithms. */
  readonly logWeights: Float64Array;
}

/** Parts of a parameter vector. */
export interface LogitParameters {
  readonly thresholds: Float64Array;
  readonly weights: Float64Array;
  readonly personSd: number;
}

export function splitParameters(
  { steps, columns }: ScaleAnswers,
  { thresholds, hasPersons }: LogitModel,
  point: Float64Array,
): LogitParameters {
  const count = thresholdCount(thresholds, steps);
  return {
    thresholds: thresholdsOf(thresholds, point.subarray(0, count), steps),
    weights: point.subarray(count, count + columns.columns),
    personSd: hasPersons ? Math.exp(at(point, count + columns.columns)) : 0,
  };
}

/** The part of each answer's value that its columns explain. */
export function explainedValues({ columns }: ScaleAnswers, weights: Float64Array): Float64Array {
  const values = new Float64Array(columns.rows);
  for (let i = 0; i < columns.rows; i += 1) {
    let sum = 0;
    for (let j = 0; j < columns.columns; j += 1) sum += at(columns.values, i * columns.columns + j) * at(weights, j);
    values[i] = sum;
  }
  return values;
}

/**
 * Minus the logarithm of likelihood times priors, with its exact slopes, the persons' own values summed over their points.
 *
 * @param point parameters in the order of `priors`.
 */
export function logitLoss(given: ScaleAnswers, model: LogitModel, points: PersonPoints, point: Float64Array) {
  const { thresholds, weights, personSd } = splitParameters(given, model, point);
  const values = explainedValues(given, weights);
  const sums = {
    loss: 0,
    byThreshold: new Float64Array(thresholds.length),
    byValue: new Float64Array(given.answers.length),
    byPerson: 0,
  };
  const scratch = new PersonScratch(given, points.count);
  for (let person = 0; person + 1 < given.starts.length; person += 1)
    addPerson({ given, points, thresholds, values, personSd, person }, scratch, sums);
  return { ...lossAndSlopes(given, model, { point, sums, personSd }), logLikelihood: -sums.loss };
}

interface Sums {
  loss: number;
  readonly byThreshold: Float64Array;
  readonly byValue: Float64Array;
  byPerson: number;
}

interface PersonGiven {
  readonly given: ScaleAnswers;
  readonly points: PersonPoints;
  readonly thresholds: Float64Array;
  readonly values: Float64Array;
  readonly personSd: number;
  readonly person: number;
}

/** Chances and slopes of one person's answers at every point, kept from one pass to the next so that nothing is allocated. */
class PersonScratch {
  readonly byValue: Float64Array;
  readonly byLower: Float64Array;
  readonly byUpper: Float64Array;
  readonly logs: Float64Array;

  constructor({ starts }: ScaleAnswers, points: number) {
    let most = 0;
    for (let person = 0; person + 1 < starts.length; person += 1)
      most = Math.max(most, indexAt(starts, person + 1) - indexAt(starts, person));
    this.byValue = new Float64Array(most * points);
    this.byLower = new Float64Array(most * points);
    this.byUpper = new Float64Array(most * points);
    this.logs = new Float64Array(points);
  }
}

function addPerson(
  { given, points, thresholds, values, personSd, person }: PersonGiven,
  { byValue, byLower, byUpper, logs }: PersonScratch,
  sums: Sums,
): void {
  const from = indexAt(given.starts, person);
  const to = indexAt(given.starts, person + 1);
  const { count } = points;
  let largest = -Infinity;
  for (let q = 0; q < count; q += 1) {
    let sum = at(points.logWeights, person * count + q);
    const own = personSd * at(points.values, person * count + q);
    for (let i = from; i < to; i += 1) {
      const answer = indexAt(given.answers, i);
      const value = at(values, i) + own;
      const lower = answer === 0 ? -Infinity : at(thresholds, answer - 1) - value;
      const upper = answer === thresholds.length ? Infinity : at(thresholds, answer) - value;
      // As `answerChance`, written out: it is most of the time of a fit.
      const below = logistic(upper);
      const above = logistic(-lower);
      const width = -Math.expm1(lower - upper);
      sum += Math.log(below * above * width);
      const entry = (i - from) * count + q;
      byValue[entry] = below - above;
      byUpper[entry] = upper === Infinity ? 0 : (1 - below) / (above * width);
      byLower[entry] = lower === -Infinity ? 0 : -(1 - above) / (below * width);
    }
    logs[q] = sum;
    if (sum > largest) largest = sum;
  }
  let total = 0;
  for (let q = 0; q < count; q += 1) total += Math.exp(at(logs, q) - largest);
  sums.loss -= largest + Math.log(total);
  for (let q = 0; q < count; q += 1) {
    const share = Math.exp(at(logs, q) - largest) / total;
    const own = at(points.values, person * count + q);
    for (let i = from; i < to; i += 1) {
      const answer = indexAt(given.answers, i);
      const entry = (i - from) * count + q;
      sums.byValue[i] = at(sums.byValue, i) - share * at(byValue, entry);
      sums.byPerson -= share * at(byValue, entry) * own;
      if (answer > 0) sums.byThreshold[answer - 1] = at(sums.byThreshold, answer - 1) - share * at(byLower, entry);
      if (answer < thresholds.length)
        sums.byThreshold[answer] = at(sums.byThreshold, answer) - share * at(byUpper, entry);
    }
  }
}

/** The derivative of a mean answer is at most so curved in its value: a scale for the first step of a search. */
const CURVATURE = 0.3;

function lossAndSlopes(
  given: ScaleAnswers,
  model: LogitModel,
  { point, sums, personSd }: { readonly point: Float64Array; readonly sums: Sums; readonly personSd: number },
) {
  const { columns, steps, answers } = given;
  const count = thresholdCount(model.thresholds, steps);
  const slopes = new Float64Array(point.length);
  const curvatures = new Float64Array(point.length).fill(CURVATURE * (1 + answers.length));
  thresholdSlopes(
    model.thresholds,
    { told: point.subarray(0, count), byThreshold: sums.byThreshold },
    slopes.subarray(0, count),
  );
  for (let j = 0; j < columns.columns; j += 1) {
    let slope = 0;
    let squares = 0;
    for (let i = 0; i < columns.rows; i += 1) {
      const entry = at(columns.values, i * columns.columns + j);
      slope += entry * at(sums.byValue, i);
      squares += entry * entry;
    }
    slopes[count + j] = slope;
    curvatures[count + j] = CURVATURE * (1e-3 + squares);
  }
  if (model.hasPersons) slopes[point.length - 1] = personSd * sums.byPerson;
  let value = sums.loss;
  model.priors.forEach(({ mean, sd }, j) => {
    if (sd === Infinity) return;
    const distance = (at(point, j) - mean) / sd;
    value += distance ** 2 / 2;
    slopes[j] = at(slopes, j) + distance / sd;
    curvatures[j] = at(curvatures, j) + 1 / sd ** 2;
  });
  return { value, slopes, curvatures };
}

/** Points for everybody alike, before anything is known of them. */
export function commonPoints({ points, weights }: Quadrature, persons: number): PersonPoints {
  const count = points.length;
  const values = new Float64Array(persons * count);
  const logWeights = new Float64Array(persons * count);
  for (let person = 0; person < persons; person += 1) {
    values.set(points, person * count);
    logWeights.set(
      weights.map((weight) => Math.log(weight)),
      person * count,
    );
  }
  return { count, values, logWeights };
}
