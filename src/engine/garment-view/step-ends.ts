import type { OutlinePoint } from "../garment";
import type { Place } from "./line";
import { staircaseOf, wrapped, type Staircase } from "./staircase";

/** A place that the smoothed line goes through. */
export interface StepEnd {
  readonly at: Place;
  /** Whether it is straight from there to the next one, whatever comes before. */
  readonly isStraightAfter: boolean;
  /** Of a step its upright end, from its first row to its last, cm; null of a corner or the end of a straight edge. */
  readonly upright: readonly [bottomCm: number, topCm: number] | null;
}

/** A slope runs into the straight edge above it over so many rows. */
const JOIN_ROWS = 2;
/** The last bind-off of a slope may be so many times as wide as the one before it and still belong to the slope. */
const SLOPE_TIMES = 1.5;

/**
 * The places that the smoothed outline of a piece goes through: of every step the end of the first row that was worked after its
 * stitches were bound off, decreased or added; both ends of every straight edge; both ends of a level one, such as a cast-on or
 * the bottom of a neck, but where it is only the last step of a slope.
 *
 * @param ring a stepped outline as `traceOutline` has it: first a level stretch, then upright and level ones in turn.
 * @param rowCm height of a row.
 * @returns in the ring's order, closed: after the last comes the first.
 */
export function stepEnds(ring: readonly OutlinePoint[], rowCm: number): StepEnd[] {
  const stairs = staircaseOf(ring, rowCm);
  const found: StepEnd[] = [];
  for (let step = 0; step < stairs.steps; step += 1) {
    if (stairs.isStep[step]) addStep(found, stairs, step);
    else addLevel(found, stairs, step);
  }
  return found;
}

/** A level edge that ends a side: a hem, a neck, the last bind-off of a shoulder; or the point between two slopes, as of a V. */
function addLevel(found: StepEnd[], stairs: Staircase, step: number): void {
  const { from, to, isStraight, treadCm } = stairs;
  const [start, end] = [from[step], to[step]];
  if (start === undefined || end === undefined) return;
  const fromCm = slopeTread(stairs, step - 1, step - 1);
  const toCm = slopeTread(stairs, step + 1, step);
  const ownCm = treadCm[step] ?? 0;
  const isPoint = Math.max(fromCm, toCm) <= 2 * Math.min(fromCm, toCm) && ownCm <= SLOPE_TIMES * (fromCm + toCm);
  const [isFromSlope, isToSlope] = [isPoint || ownCm <= SLOPE_TIMES * fromCm, isPoint || ownCm <= SLOPE_TIMES * toCm];
  if (isFromSlope && isToSlope)
    found.push({ at: [(start[0] + end[0]) / 2, start[1]], isStraightAfter: false, upright: null });
  if (!isFromSlope) found.push({ at: start, isStraightAfter: !isToSlope, upright: null });
  if (!isToSlope) found.push({ at: end, isStraightAfter: isStraight[step] ?? true, upright: null });
}

/** How wide the neighbouring step of a slope is, cm; 0 where no slope comes to an upright edge. */
function slopeTread({ steps, isStraight, isStep, treadCm }: Staircase, neighbour: number, edge: number): number {
  const at = wrapped(neighbour, steps);
  return isStraight[wrapped(edge, steps)] || !isStep[at] ? 0 : (treadCm[at] ?? 0);
}

/** Rows go on at both sides of the level stretch. */
function addStep(found: StepEnd[], stairs: Staircase, step: number): void {
  const { from, to, isStraight, rowCm, topCm, bottomCm, isUp, steps } = stairs;
  const before = wrapped(step - 1, steps);
  const [start, end] = [from[step], to[step]];
  if (start === undefined || end === undefined) return;
  const isUpward = isUp[step] ?? true;
  const [lower, upper] = isUpward ? [before, step] : [step, before];
  const [foot, head] = isUpward ? [start, end] : [end, start];
  const [isLowerStraight, isUpperStraight] = [isStraight[lower] ?? true, isStraight[upper] ?? true];
  const isLevel = isLowerStraight && isUpperStraight;
  const [level, top] = [head[1], topCm[upper] ?? head[1]];
  const rows = isUpperStraight ? (isLevel ? 0 : JOIN_ROWS) : 1;
  const y = Math.min(level + rows * rowCm, (level + top) / 2 + rowCm, top);
  const upright = isUpperStraight ? null : ([bottomCm[upper] ?? level, top] as const);
  const at: Place = [head[0], y];
  if (!isUpward) found.push({ at, isStraightAfter: isLevel, upright });
  if (isLowerStraight) found.push({ at: foot, isStraightAfter: isUpward ? isLevel : true, upright: null });
  if (isUpward) found.push({ at, isStraightAfter: isUpperStraight, upright });
}
