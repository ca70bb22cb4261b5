import { stretchesOf } from "./stretches";

export type OutlinePoint = readonly [xCm: number, yCm: number];

export interface Rectangle {
  readonly leftCm: number;
  readonly rightCm: number;
  readonly bottomCm: number;
  readonly topCm: number;
}

/** Coordinates that follow each other closer than this are one: far below a stitch, far above what sums of them are off by. */
const SAME_CM = 1e-8;

/**
 * Outline of the fabric that rectangles cover together: their union is cut into layers between neighbouring heights, and the
 * ends of the layers are followed with the fabric on the left.
 *
 * @param rectangles cm, in any order; they may touch and overlap.
 * @returns the closed line about the most fabric, counter-clockwise from its lowest point at the left, without the first point
 * again and without points on a straight line; openings inside and what lies apart are left out. Empty where nothing is covered.
 */
export function traceOutline(rectangles: readonly Rectangle[]): OutlinePoint[] {
  let best: { ring: readonly OutlinePoint[]; area: number } = { ring: [], area: 0 };
  for (const side of joinedSides(rectangles)) {
    if (side.isFollowed) continue;
    const ring = follow(side);
    const area = signedArea(ring);
    if (area > best.area) best = { ring, area };
  }
  return fromLowestLeft(best.ring);
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Rows of fabric with the same edges. */
interface Layer {
  readonly bottom: number;
  top: number;
  /** Covered, from left to right, with gaps between them. */
  readonly spans: readonly Span[];
}

function layersOf(rectangles: readonly Rectangle[]): Layer[] {
  const xs = distinct(rectangles, "leftCm", "rightCm");
  const stacked = stackedLayers(rectangles, xs);
  if (stacked !== null) return stacked;
  const ys = distinct(rectangles, "bottomCm", "topCm");
  const snapped = rectangles
    .map(({ leftCm, rightCm, bottomCm, topCm }) => ({
      span: { from: snap(xs, leftCm), to: snap(xs, rightCm) },
      from: snap(ys, bottomCm),
      to: snap(ys, topCm),
    }))
    .filter(({ span, from, to }) => span.to > span.from && to > from);
  return stretchesOf(snapped).map(({ from, to, items }) => ({
    bottom: from,
    top: to,
    spans: merged(items.map(({ span }) => span)),
  }));
}

/** Rectangles of which each begins where the last one ends, as most pieces have them: the same layers, without cutting any; else null. */
function stackedLayers(rectangles: readonly Rectangle[], xs: readonly number[]): Layer[] | null {
  const layers: Layer[] = [];
  let below: Rectangle | null = null;
  for (const rectangle of rectangles) {
    const { leftCm, rightCm, bottomCm, topCm } = rectangle;
    const span = { from: snap(xs, leftCm), to: snap(xs, rightCm) };
    if (span.to <= span.from || topCm - bottomCm <= 2 * SAME_CM) return null;
    let bottom = bottomCm;
    if (below !== null) {
      if (Math.abs(bottomCm - below.topCm) > SAME_CM) return null;
      bottom = Math.min(bottomCm, below.topCm);
      const last = layers.at(-1);
      if (last !== undefined) last.top = bottom;
    }
    layers.push({ bottom, top: topCm, spans: [span] });
    below = rectangle;
  }
  return layers;
}

/** Values of two sides in ascending order; of those that are one, the first. */
function distinct(rectangles: readonly Rectangle[], one: keyof Rectangle, other: keyof Rectangle): number[] {
  const values = new Float64Array(2 * rectangles.length);
  for (let index = 0; index < rectangles.length; index += 1) {
    values[2 * index] = rectangles[index]?.[one] ?? 0;
    values[2 * index + 1] = rectangles[index]?.[other] ?? 0;
  }
  values.sort();
  const firsts: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value - last > SAME_CM) firsts.push(value);
    last = value;
  }
  return firsts;
}

/** The last of some distinct values that is not above one. */
function snap(firsts: readonly number[], value: number): number {
  let [low, high] = [0, firsts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((firsts[middle] ?? value) <= value) low = middle;
    else high = middle - 1;
  }
  return firsts[low] ?? value;
}

function merged(spans: readonly Span[]): Span[] {
  const found: Span[] = [];
  for (const span of spans.toSorted((one, other) => one.from - other.from)) {
    const last = found.at(-1);
    if (last !== undefined && span.from <= last.to)
      found[found.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else found.push(span);
  }
  return found;
}

/** An end of a span of one layer. With the fabric on the left a right end is followed upwards, a left end downwards. */
interface Side {
  readonly x: number;
  readonly isRight: boolean;
  /** The height at which it is left, and the side that the line goes on to there. */
  readonly endY: number;
  next: Side | null;
  isFollowed: boolean;
}

function joinedSides(rectangles: readonly Rectangle[]): Side[] {
  const all: Side[] = [];
  let below: readonly Side[] = [];
  let y = 0;
  for (const { bottom, top, spans } of layersOf(rectangles)) {
    const sides: Side[] = [];
    for (const { from, to } of spans) sides.push(newSide(from, bottom, false), newSide(to, top, true));
    for (const side of sides) all.push(side);
    join(below, sides, bottom);
    below = sides;
    y = top;
  }
  join(below, [], y);
  return all;
}

function newSide(x: number, endY: number, isRight: boolean): Side {
  return { x, isRight, endY, next: null, isFollowed: false };
}

/**
 * At a height, joins the sides below and above it. From left to right each two of them bound a stretch that only one of both
 * layers covers, or none where one side goes on in the other. Where two corners touch, the line keeps to its own fabric.
 */
function join(below: readonly Side[], above: readonly Side[], y: number): void {
  let [nextBelow, nextAbove] = [0, 0];
  const next = () => {
    const [low, high] = [below[nextBelow], above[nextAbove]];
    if (low !== undefined && (high === undefined || comesFirst(low, high))) {
      nextBelow += 1;
      return low;
    }
    nextAbove += 1;
    return high;
  };
  for (let one = next(); one !== undefined; one = next()) {
    const other = next();
    if (other === undefined) return;
    if (one.endY === y) one.next = other;
    else other.next = one;
  }
}

function comesFirst(low: Side, high: Side): boolean {
  return low.x < high.x || (low.x === high.x && (low.isRight || !high.isRight));
}

/** The closed line that a side is part of. */
function follow(first: Side): OutlinePoint[] {
  const ring: OutlinePoint[] = [];
  for (let side: Side | null = first; side !== null && !side.isFollowed; side = side.next) {
    side.isFollowed = true;
    const { x, endY, next } = side;
    if (next !== null && next.x !== x) ring.push([x, endY], [next.x, endY]);
  }
  return ring;
}

function signedArea(ring: readonly OutlinePoint[]): number {
  let sum = 0;
  let last = ring.at(-1);
  for (const point of ring) {
    if (last !== undefined) sum += (last[0] * point[1] - point[0] * last[1]) / 2;
    last = point;
  }
  return sum;
}

function fromLowestLeft(ring: readonly OutlinePoint[]): OutlinePoint[] {
  let first = 0;
  let best = ring[0];
  for (let index = 1; index < ring.length; index += 1) {
    const point = ring[index];
    if (point === undefined || best === undefined) continue;
    if (point[1] < best[1] || (point[1] === best[1] && point[0] < best[0])) [first, best] = [index, point];
  }
  return first === 0 ? ring.slice() : [...ring.slice(first), ...ring.slice(0, first)];
}
