import type { OutlinePoint } from "../garment";

/**
 * A stepped outline as a closed row of steps: a level stretch each, from left or from right, and the upright edge after it. Level
 * stretch i lies between upright edges i − 1 and i.
 */
export interface Staircase {
  readonly steps: number;
  readonly rowCm: number;
  /** Ends of the level stretch in the ring's order, and its length. */
  readonly from: readonly OutlinePoint[];
  readonly to: readonly OutlinePoint[];
  readonly treadCm: Float64Array;
  /** Of the upright edge: how high it reaches, and whether it is followed upwards. */
  readonly bottomCm: Float64Array;
  readonly topCm: Float64Array;
  readonly isUp: readonly boolean[];
  /** Whether the edge only steps sideways at the level stretch: rows go on at both sides of it. */
  readonly isStep: readonly boolean[];
  /** Whether the upright edge is straight, not a step of a slope. */
  readonly isStraight: readonly boolean[];
}

/** A straight edge is at least so many times as high as its neighbours in a slope, and by so many rows. */
const STRAIGHT_TIMES = 1.6;
const STRAIGHT_ROWS = 2.5;
/** Rows that are too few to tell a straight edge from a slope. */
const SHORT_ROWS = 3;

export function staircaseOf(ring: readonly OutlinePoint[], rowCm: number): Staircase {
  const steps = ring.length >> 1;
  const starts: OutlinePoint[] = [];
  const ends: OutlinePoint[] = [];
  const isUp: boolean[] = [];
  const isStep: boolean[] = [];
  const treadCm = new Float64Array(steps);
  const bottomCm = new Float64Array(steps);
  const topCm = new Float64Array(steps);
  for (let step = 0; step < steps; step += 1) {
    const [from, to, next] = [ring[2 * step], ring[2 * step + 1], ring[(2 * step + 2) % ring.length]];
    if (from === undefined || to === undefined || next === undefined) continue;
    starts.push(from);
    ends.push(to);
    treadCm[step] = Math.abs(to[0] - from[0]);
    bottomCm[step] = Math.min(to[1], next[1]);
    topCm[step] = Math.max(to[1], next[1]);
    isUp.push(next[1] > to[1]);
  }
  for (let step = 0; step < steps; step += 1) isStep.push(isUp[wrapped(step - 1, steps)] === isUp[step]);
  const isStraight: boolean[] = [];
  const stairs = { steps, rowCm, from: starts, to: ends, treadCm, bottomCm, topCm, isUp, isStep, isStraight };
  straightEdges(stairs, isStraight);
  return stairs;
}

/** An index before the first counts from the last, and one after the last from the first. */
export function wrapped(index: number, count: number): number {
  return index < 0 ? index + count : index >= count ? index - count : index;
}

type Bare = Omit<Staircase, "isStraight">;

/**
 * Which upright edges are straight: those far higher than their neighbours in a slope, those that make no slope, because they
 * step sideways only once, and those below which the edge goes outwards and above which it goes inwards, or the other way round.
 */
function straightEdges(stairs: Bare, isStraight: boolean[]): void {
  const { steps, isStep, rowCm } = stairs;
  const isLong: boolean[] = [];
  for (let step = 0; step < steps; step += 1) {
    const after = wrapped(step + 1, steps);
    const highest = Math.max(
      isStep[step] ? heightOf(stairs, wrapped(step - 1, steps)) : 0,
      isStep[after] ? heightOf(stairs, after) : 0,
    );
    const own = heightOf(stairs, step);
    isLong.push(highest === 0 || (own >= STRAIGHT_TIMES * highest && own >= highest + STRAIGHT_ROWS * rowCm));
  }
  for (let step = 0; step < steps; step += 1)
    isStraight.push(isLong[step] === true || isTurn(stairs, step) || isAlone(stairs, isLong, step));
}

function heightOf({ topCm, bottomCm }: Bare, step: number): number {
  return (topCm[step] ?? 0) - (bottomCm[step] ?? 0);
}

function isHigh(stairs: Bare, step: number): boolean {
  return heightOf(stairs, step) > SHORT_ROWS * stairs.rowCm;
}

function isTurn(stairs: Bare, step: number): boolean {
  const { steps, isStep, from, to } = stairs;
  const after = wrapped(step + 1, steps);
  if (!isStep[step] || !isStep[after]) return false;
  return (to[step]?.[0] ?? 0) > (from[step]?.[0] ?? 0) !== (to[after]?.[0] ?? 0) > (from[after]?.[0] ?? 0);
}

/** Whether no slope of several steps goes on at either end of an edge. */
function isAlone(stairs: Bare, isLong: readonly boolean[], step: number): boolean {
  const { steps } = stairs;
  const [below, above] = [wrapped(step - 1, steps), wrapped(step + 1, steps)];
  const [before, after] = [goesOnBefore(stairs, isLong, step), goesOnAfter(stairs, isLong, step)];
  if (!isHigh(stairs, step) || (before && after)) return false;
  if (before) return !goesOnBefore(stairs, isLong, below) && isHigh(stairs, below);
  if (after) return !goesOnAfter(stairs, isLong, above) && isHigh(stairs, above);
  return true;
}

function goesOnBefore({ steps, isStep }: Bare, isLong: readonly boolean[], step: number): boolean {
  return isStep[step] === true && isLong[wrapped(step - 1, steps)] !== true;
}

function goesOnAfter({ steps, isStep }: Bare, isLong: readonly boolean[], step: number): boolean {
  const after = wrapped(step + 1, steps);
  return isStep[after] === true && isLong[after] !== true;
}
