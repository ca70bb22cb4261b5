import { normalChance } from "../distributions";
import { at, indexAt } from "../linear-algebra";
import { answerChance, logisticDensity } from "./answer-chance";
import type { AnswerTables } from "./answer-tables";

/** How testers feel in some sizes beside "as wished", from tight below 0 to loose above, as a normal distribution. */
export interface Level {
  readonly mean: number;
  readonly sd: number;
}

interface FoundLevel extends Level {
  /** Logarithm of the chance of these sizes' answers, whatever the level. */
  readonly evidence: number;
}

/** One way in which the sizes of an area may feel: those from `from` to `to` one way, and the others about as wished. */
export interface LevelCase {
  readonly from: number;
  readonly to: number;
  readonly inside: Level;
  /** By size. */
  readonly levels: readonly Level[];
  /** Logarithm of the chance of the area's answers. */
  readonly evidence: number;
}

interface LevelsGiven {
  readonly tables: AnswerTables;
  /** What each answer is expected to be about, without the levels that are looked for. */
  readonly bare: Float64Array;
  readonly answers: Int32Array;
  /** Answers of the area, by index; and the size of each. */
  readonly own: readonly number[];
  readonly sizeOf: (answer: number) => number;
  readonly sizes: number;
  /** Standard deviations of the level of the sizes that may depart, and of the others', before anything is known. */
  readonly insideSd: number;
  readonly othersSd: number;
}

/** The area as a whole, and every part of its sizes from one that answered up, and up to the one before. The whole comes first. */
export function levelCases(given: LevelsGiven): LevelCase[] {
  const { own, sizeOf, sizes } = given;
  const weights = pointWeights(given);
  const answered = [...new Set(own.map(sizeOf))].toSorted((left, right) => left - right);
  const levelOf = (isIn: (size: number) => boolean, priorSd: number) =>
    likeliestLevel(
      { ...given, priorSd },
      own.flatMap((answer, index) => (isIn(sizeOf(answer)) ? [{ answer, index }] : [])),
      weights,
    );
  const caseOf = (range: { readonly from: number; readonly to: number }): LevelCase => {
    const isIn = (size: number) => size >= range.from && size <= range.to;
    const inside = levelOf(isIn, given.insideSd);
    const others = levelOf((size) => !isIn(size), given.othersSd);
    return {
      ...{ ...range, inside, evidence: inside.evidence + others.evidence },
      levels: Array.from({ length: sizes }, (_, size) => (isIn(size) ? inside : others)),
    };
  };
  return [
    caseOf({ from: 0, to: sizes - 1 }),
    ...answered.slice(1).map((from) => caseOf({ from, to: sizes - 1 })),
    ...answered.slice(0, -1).map((to) => caseOf({ from: 0, to })),
  ];
}

/** Chances of the cases where all are alike before anything is known. */
export function caseChances(cases: readonly LevelCase[]): number[] {
  return shares(cases.map(({ evidence }) => evidence));
}

/** The same where the sizes that depart feel tight, or loose. */
export function findingChances(cases: readonly LevelCase[], feels: "tight" | "loose"): number[] {
  const sign = feels === "tight" ? -1 : 1;
  return shares(
    cases.map(({ evidence, inside }) => {
      const chance = normalChance((sign * inside.mean) / inside.sd);
      return chance > 0 ? evidence + Math.log(chance) : -Infinity;
    }),
  );
}

function shares(logs: readonly number[]): number[] {
  const largest = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - largest));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

/** How likely each point of the tester's own value is by their other answers: entry at `index * points + point`. */
function pointWeights({ tables, answers, own }: LevelsGiven): Float64Array {
  const { starts, steps, quadrature, chances } = tables;
  const count = quadrature.points.length;
  const result = new Float64Array(own.length * count);
  const personOf = new Int32Array(answers.length);
  for (let person = 0; person + 1 < starts.length; person += 1)
    personOf.fill(person, indexAt(starts, person), indexAt(starts, person + 1));
  own.forEach((answer, index) => {
    const person = indexAt(personOf, answer);
    let total = 0;
    for (let q = 0; q < count; q += 1) {
      let weight = at(quadrature.weights, q);
      for (let i = indexAt(starts, person); i < indexAt(starts, person + 1); i += 1)
        if (i !== answer) weight *= at(chances, (i * count + q) * steps + indexAt(answers, i));
      result[index * count + q] = weight;
      total += weight;
    }
    for (let q = 0; q < count; q += 1) result[index * count + q] = at(result, index * count + q) / total;
  });
  return result;
}

const MAX_STEPS = 50;
const MAX_STEP = 2;
const TOLERANCE = 1e-8;

/** Newton's method, and Laplace's approximation of the evidence. */
function likeliestLevel(
  { tables, bare, answers, priorSd }: LevelsGiven & { readonly priorSd: number },
  own: readonly { readonly answer: number; readonly index: number }[],
  weights: Float64Array,
): FoundLevel {
  let mean = 0;
  let found = { log: 0, slope: 0, curvature: 1 };
  for (let step = 0; step < MAX_STEPS; step += 1) {
    found = { log: -((mean / priorSd) ** 2) / 2, slope: -mean / priorSd ** 2, curvature: priorSd ** -2 };
    for (const { answer, index } of own)
      addAnswer({ tables, answers, weights, answer, index, value: at(bare, answer) + mean }, found);
    // Mixed over a tester's own value the curvature may be below 0 far from the answers: then a step along the slope.
    const change = found.slope / Math.max(found.curvature, priorSd ** -2);
    if (Math.abs(change) <= TOLERANCE) break;
    mean += Math.max(-MAX_STEP, Math.min(MAX_STEP, change));
  }
  const sd = 1 / Math.sqrt(Math.max(found.curvature, priorSd ** -2));
  return { mean, sd, evidence: found.log + Math.log(sd / priorSd) };
}

interface AnswerAtLevel {
  readonly tables: AnswerTables;
  readonly answers: Int32Array;
  readonly weights: Float64Array;
  readonly answer: number;
  readonly index: number;
  /** Without the tester's own. */
  readonly value: number;
}

function addAnswer(
  { tables, answers, weights, answer, index, value: known }: AnswerAtLevel,
  into: { log: number; slope: number; curvature: number },
): void {
  const { thresholds, personSd, quadrature } = tables;
  const count = quadrature.points.length;
  const step = indexAt(answers, answer);
  let chance = 0;
  let slope = 0;
  let bend = 0;
  for (let q = 0; q < count; q += 1) {
    const value = known + personSd * at(quadrature.points, q);
    const lower = step === 0 ? -Infinity : at(thresholds, step - 1) - value;
    const upper = step === thresholds.length ? Infinity : at(thresholds, step) - value;
    const { chance: own, byValue } = answerChance(lower, upper);
    const weight = at(weights, index * count + q) * own;
    chance += weight;
    slope += weight * byValue;
    bend += weight * (byValue ** 2 - logisticDensity(lower) - logisticDensity(upper));
  }
  into.log += Math.log(chance);
  into.slope += slope / chance;
  into.curvature += (slope / chance) ** 2 - bend / chance;
}
