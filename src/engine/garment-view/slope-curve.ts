import type { Place, Stretch } from "./line";
import type { StepEnd } from "./step-ends";
import { cross, dot, length, minus, plus, scaled, unit } from "./vector";

/** A slope or curve between two ends of straight edges or corners. */
export interface Slope {
  readonly from: Place;
  readonly to: Place;
  /** Directions in which it leaves and arrives, where a straight edge goes on without a corner; null: as it comes. */
  readonly leave: Place | null;
  readonly arrive: Place | null;
  readonly steps: readonly StepEnd[];
}

/** By so many rows the line may pass the upright end of a step. */
const PASS_ROWS = 0.25;
/** Turns of Newton's method by which it is found where a curve passes a step. */
const TURNS = 3;
/** How many steps before and after one tell its direction, so that shaping of every 2nd and 3rd row in turn is not seen. */
const REACH = 2;
/** A curve that bends less is straight, radians. */
const STRAIGHT = 0.01;

/**
 * The smoothest line that goes through the upright end of each step: straight where that does, else a curve through as few of
 * the steps as will do: of each stretch that misses steps, through the one that it misses by most.
 *
 * At each step that it goes through, its direction is that of the parabola through it and the steps before and after it.
 *
 * @param rowCm height of a row, cm.
 */
export function slopeCurve({ from, to, leave, arrive, steps }: Slope, rowCm: number): Stretch[] {
  const byCm = PASS_ROWS * rowCm;
  const straight: Stretch[] = [{ to, by: null, isCorner: false }];
  let missed = worstMissed(steps, { from, stretches: straight, chosen: [], byCm });
  if (missed.length === 0) return straight;
  const chosen: number[] = [];
  for (;;) {
    chosen.push(...missed);
    chosen.sort(ascending);
    const stretches = curveThrough({ from, to, leave, arrive, steps }, chosen);
    missed = worstMissed(steps, { from, stretches, chosen, byCm });
    if (missed.length === 0) return stretches;
  }
}

function ascending(one: number, other: number): number {
  return one - other;
}

interface Drawn {
  readonly from: Place;
  /** One more than chosen steps, from each of them to the next. */
  readonly stretches: readonly Stretch[];
  readonly chosen: readonly number[];
  readonly byCm: number;
}

/** Of each stretch the index of the step whose upright end it passes by most, and by more than so much; in ascending order. */
function worstMissed(steps: readonly StepEnd[], { from, stretches, chosen, byCm }: Drawn): number[] {
  const found: number[] = [];
  let [start, first] = [from, 0];
  for (let nth = 0; nth < stretches.length; nth += 1) {
    const stretch = stretches[nth];
    const end = chosen[nth] ?? steps.length;
    if (stretch === undefined) break;
    let [worst, worstCm] = [-1, byCm];
    for (let index = first; index < end; index += 1) {
      const step = steps[index];
      if (step?.upright == null) continue;
      const y = heightAt(step.at[0], start, stretch);
      const offCm = Math.max(step.upright[0] - y, y - step.upright[1]);
      if (offCm > worstCm) [worst, worstCm] = [index, offCm];
    }
    if (worst >= 0) found.push(worst);
    [start, first] = [stretch.to, end + 1];
  }
  return found;
}

/** How high a stretch is at a place between its ends, by Newton's method from the share that a straight line has. */
function heightAt(x: number, from: Place, { to, by }: Stretch): number {
  const wayCm = to[0] - from[0];
  let share = wayCm === 0 ? 0 : Math.min(1, Math.max(0, (x - from[0]) / wayCm));
  if (by === null) return from[1] + share * (to[1] - from[1]);
  const [one, other] = by;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const rest = 1 - share;
    const slope =
      3 *
      (rest * rest * (one[0] - from[0]) + 2 * rest * share * (other[0] - one[0]) + share * share * (to[0] - other[0]));
    if (slope * wayCm <= 0) break;
    const next = share - (cubic(from[0], one[0], other[0], to[0], share) - x) / slope;
    share = next < 0 ? 0 : next > 1 ? 1 : next;
  }
  return cubic(from[1], one[1], other[1], to[1], share);
}

/** One coordinate of a cubic curve at a share of it. */
function cubic(from: number, one: number, other: number, to: number, share: number): number {
  const rest = 1 - share;
  return rest * rest * (rest * from + 3 * share * one) + share * share * (3 * rest * other + share * to);
}

function curveThrough({ from, to, leave, arrive, steps }: Slope, chosen: readonly number[]): Stretch[] {
  const stretches: Stretch[] = [];
  let [start, out] = [from, leave];
  for (const index of chosen) {
    const end = steps[index]?.at ?? to;
    const into = directionAt(steps[index - REACH]?.at ?? from, end, steps[index + REACH]?.at ?? to);
    stretches.push({ to: end, by: controls(start, end, out, into), isCorner: false });
    [start, out] = [end, into];
  }
  stretches.push({ to, by: controls(start, to, out, arrive), isCorner: false });
  return stretches;
}

function directionAt(before: Place, at: Place, after: Place): Place {
  const [from, to] = [minus(at, before), minus(after, at)];
  const [fromCm, toCm] = [length(from), length(to)];
  return unit(plus(scaled(from, toCm / fromCm), scaled(to, fromCm / toCm)));
}

/** Control points of a stretch, a third of the way along its directions; null where it is straight. */
function controls(from: Place, to: Place, leave: Place | null, arrive: Place | null): readonly [Place, Place] | null {
  const way = minus(to, from);
  const along = unit(way);
  const [out, into] = [leave ?? along, arrive ?? along];
  if (isAlong(out, along) && isAlong(into, along)) return null;
  const third = length(way) / 3;
  return [plus(from, scaled(out, third)), minus(to, scaled(into, third))];
}

function isAlong(direction: Place, along: Place): boolean {
  return Math.abs(cross(direction, along)) < STRAIGHT && dot(direction, along) > 0;
}
