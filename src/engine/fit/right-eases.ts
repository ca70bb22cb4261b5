import { normalChance } from "../distributions";
import { at } from "../linear-algebra";
import type { PatternDocument } from "../pattern";
import { logistic } from "./answer-chance";
import { gaussHermite } from "./gauss-hermite";
import { easeUnitCm, plannedEaseCm, type JudgedArea } from "./rated-eases";
import type { Level, LevelCase } from "./size-levels";

/** The ease of one part of the body that feels right, by size. */
export interface AreaEase {
  readonly area: string;
  /** The measurement by which the ease is told. */
  readonly measurement: string;
  readonly sizes: readonly SizeEase[];
}

interface SizeEase {
  readonly size: string;
  readonly plannedCm: number;
  /** The ease with which as many would feel the garment tight as loose, and its 90 % interval; null where the answers leave it open. */
  readonly rightCm: number | null;
  readonly lowCm: number | null;
  readonly highCm: number | null;
  /** So far on either side of it more testers say "as wished" than tight, and than loose; null where that is nowhere so. */
  readonly wishedWithinCm: number | null;
}

const INTERVAL_CHANCE = 0.9;
/** An ease this far from the planned one, in shares of `easeUnitCm`, is more than answers about this one can tell. */
const MAX_DISTANCE = 3;
/** To a five-thousandth of a unit. */
const HALVINGS = 16;

interface EaseGiven {
  readonly judged: JudgedArea;
  readonly slope: Level;
  readonly cases: readonly LevelCase[];
  /** Of the cases. */
  readonly chances: readonly number[];
  readonly thresholds: Float64Array;
  readonly personSd: number;
}

/** The right ease of every size: the level of its sizes, averaged over where it may change, divided by the slope. */
export function rightEases(pattern: PatternDocument, given: EaseGiven): AreaEase {
  const { judged, slope, cases, chances } = given;
  const reach = wishedWithin(given.thresholds, given.personSd);
  return {
    ...{ area: judged.area, measurement: judged.measurement.id },
    sizes: pattern.sizes.map(({ id, body }, size): SizeEase => {
      const unitCm = easeUnitCm(judged, body);
      const plannedCm = plannedEaseCm(judged, id);
      const chanceBelow = (distance: number) =>
        cases.reduce((sum, { levels }, index) => {
          const level = levels[size] ?? { mean: 0, sd: 1 };
          const sd = Math.hypot(level.sd, slope.sd * distance);
          return sum + (chances[index] ?? 0) * normalChance((level.mean + slope.mean * distance) / sd);
        }, 0);
      const cmAt = (chance: number) => {
        const distance = distanceAt(chanceBelow, chance);
        return distance === null ? null : plannedCm + unitCm * distance;
      };
      const tail = (1 - INTERVAL_CHANCE) / 2;
      return {
        ...{ size: id, plannedCm, rightCm: cmAt(0.5), lowCm: cmAt(tail), highCm: cmAt(1 - tail) },
        wishedWithinCm: reach === null || slope.mean <= 0 ? null : (reach / slope.mean) * unitCm,
      };
    }),
  };
}

/** Where the chance, which rises with the distance, reaches the wanted one; null beyond `MAX_DISTANCE`. */
function distanceAt(chanceBelow: (distance: number) => number, wanted: number): number | null {
  let [low, high] = [-MAX_DISTANCE, MAX_DISTANCE];
  if (chanceBelow(low) > wanted || chanceBelow(high) < wanted) return null;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (chanceBelow(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const POINTS = 15;

/** How far from 0 "as wished" is still the answer of more testers than either side, over all testers. */
function wishedWithin(thresholds: Float64Array, personSd: number): number | null {
  const inner = at(thresholds, thresholds.length / 2);
  const { points, weights } = gaussHermite(POINTS);
  const below = (threshold: number, value: number) =>
    points.reduce((sum, point, q) => sum + at(weights, q) * logistic(threshold - value - personSd * point), 0);
  /** Chance of "as wished" less that of "loose". */
  const lead = (value: number) => 2 * below(inner, value) - below(-inner, value) - 1;
  if (lead(0) <= 0) return null;
  let [low, high] = [0, 2 * inner + 4 * personSd + 4];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (lead(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}
