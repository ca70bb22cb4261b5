import { at, indexAt } from "../linear-algebra";
import { answerChance, logistic } from "./answer-chance";
import type { Quadrature } from "./gauss-hermite";

/** Answers whose chances are known: where testers feel as the fit says, apart from what is asked about. */
export interface KnownChances {
  /** Ascending; one fewer than the steps of the scale. */
  readonly thresholds: Float64Array;
  /** What each answer is expected to be about, without the person's own value. */
  readonly values: Float64Array;
  readonly personSd: number;
  /** Where each person's answers begin, and, last, their number. */
  readonly starts: Int32Array;
}

/** Chances of every answer: entry at `(answer * points + point) * steps + step`. */
export interface AnswerTables extends KnownChances {
  readonly steps: number;
  readonly quadrature: Quadrature;
  readonly chances: Float64Array;
}

/** Chances of every step at every point of a person's own value, so that a simulated call costs no exponentials. */
export function answerTables(known: KnownChances, quadrature: Quadrature): AnswerTables {
  const { thresholds, values, personSd } = known;
  const steps = thresholds.length + 1;
  const count = quadrature.points.length;
  const chances = new Float64Array(values.length * count * steps);
  for (let i = 0; i < values.length; i += 1) {
    for (let q = 0; q < count; q += 1) {
      const value = at(values, i) + personSd * at(quadrature.points, q);
      for (let step = 0; step < steps; step += 1) {
        const lower = step === 0 ? -Infinity : at(thresholds, step - 1) - value;
        const upper = step === steps - 1 ? Infinity : at(thresholds, step) - value;
        chances[(i * count + q) * steps + step] = answerChance(lower, upper).chance;
      }
    }
  }
  return { ...known, steps, quadrature, chances };
}

/** The tables, and by what each chance is multiplied once the garment is felt so much tighter, and looser. */
export interface MovedTables extends AnswerTables {
  readonly tighter: Float64Array;
  readonly looser: Float64Array;
}

/** Less than this is no chance: a quotient of two such chances would be noise. */
const MIN_CHANCE = 1e-200;

export function movedTables(known: KnownChances, quadrature: Quadrature, by: number): MovedTables {
  const tables = answerTables(known, quadrature);
  const quotients = (move: number) =>
    answerTables({ ...known, values: known.values.map((value) => value + move) }, quadrature).chances.map(
      (chance, entry) => Math.max(chance, MIN_CHANCE) / Math.max(at(tables.chances, entry), MIN_CHANCE),
    );
  return { ...tables, tighter: quotients(-by), looser: quotients(by) };
}

/** By area and size, how much likelier the answers there are once they are moved: differences of logarithms. */
export interface MoveGains {
  readonly tighter: Float64Array;
  readonly looser: Float64Array;
}

/**
 * How much likelier the answers of each area and size are once the garment is felt tighter there, or looser, the testers'
 * other answers as they are.
 *
 * @param answers steps from 0. @param cells `area * sizes + size` of each. @param into one for each area and size.
 */
export function moveGains(
  tables: MovedTables,
  { answers, cells }: { readonly answers: Int32Array; readonly cells: Int32Array },
  into: MoveGains,
): void {
  const { starts, steps, quadrature, chances } = tables;
  const count = quadrature.points.length;
  const weights = new Float64Array(count);
  into.tighter.fill(0);
  into.looser.fill(0);
  for (let person = 0; person + 1 < starts.length; person += 1) {
    const from = indexAt(starts, person);
    const to = indexAt(starts, person + 1);
    let total = 0;
    for (let q = 0; q < count; q += 1) {
      let weight = at(quadrature.weights, q);
      for (let i = from; i < to; i += 1) weight *= at(chances, (i * count + q) * steps + indexAt(answers, i));
      weights[q] = weight;
      total += weight;
    }
    if (total === 0) continue;
    for (let i = from; i < to; i += 1) {
      let tighter = 0;
      let looser = 0;
      for (let q = 0; q < count; q += 1) {
        const entry = (i * count + q) * steps + indexAt(answers, i);
        tighter += at(weights, q) * at(tables.tighter, entry);
        looser += at(weights, q) * at(tables.looser, entry);
      }
      const cell = indexAt(cells, i);
      into.tighter[cell] = at(into.tighter, cell) + Math.log(tighter / total);
      into.looser[cell] = at(into.looser, cell) + Math.log(looser / total);
    }
  }
}

/** Draws the answers of a call in which everything is as it is expected to be. @param random of `seededRandom`. */
export function drawAnswers(
  { thresholds, values, personSd, starts }: KnownChances,
  random: { readonly uniform: () => number; readonly normal: () => number },
  into: Int32Array,
): void {
  for (let person = 0; person + 1 < starts.length; person += 1) {
    const own = personSd === 0 ? 0 : personSd * random.normal();
    for (let i = indexAt(starts, person); i < indexAt(starts, person + 1); i += 1) {
      const drawn = random.uniform();
      let step = 0;
      while (step < thresholds.length && drawn > logistic(at(thresholds, step) - at(values, i) - own)) step += 1;
      into[i] = step;
    }
  }
}
