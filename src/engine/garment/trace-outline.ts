export type OutlinePoint = readonly [xCm: number, yCm: number];
type Edge = readonly [from: OutlinePoint, to: OutlinePoint];

export interface Rectangle {
  readonly leftCm: number;
  readonly rightCm: number;
  readonly bottomCm: number;
  readonly topCm: number;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Coordinates that follow each other closer than this are one: far below a stitch, far above what sums of them are off by. */
const SAME_CM = 1e-8;

/**
 * Outline of the fabric that rectangles cover together: their union is cut into layers between neighbouring heights, and what
 * bounds the layers is followed with the fabric on the left.
 *
 * @param rectangles cm, in any order; they may touch and overlap.
 * @returns the longest closed line, counter-clockwise from its lowest point at the left, without the first point again and
 * without points on a straight line; openings inside and what lies apart are left out. Empty where nothing is covered.
 */
export function traceOutline(rectangles: readonly Rectangle[]): OutlinePoint[] {
  const rings = followEdges(edgesOf(layersOf(rectangles)));
  let best: { ring: OutlinePoint[]; area: number } = { ring: [], area: 0 };
  for (const ring of rings) {
    const area = signedArea(ring);
    if (area > best.area) best = { ring, area };
  }
  return fromLowestLeft(withoutStraight(best.ring));
}

/** Rows of fabric with the same edges. */
interface Layer {
  readonly bottom: number;
  readonly top: number;
  /** Covered, from left to right, with gaps between them. */
  readonly spans: readonly Span[];
}

function layersOf(rectangles: readonly Rectangle[]): Layer[] {
  const snapX = snap(rectangles.flatMap(({ leftCm, rightCm }) => [leftCm, rightCm]));
  const snapY = snap(rectangles.flatMap(({ bottomCm, topCm }) => [bottomCm, topCm]));
  const snapped = rectangles
    .map(({ leftCm, rightCm, bottomCm, topCm }) => ({
      span: { from: snapX(leftCm), to: snapX(rightCm) },
      ...{ bottom: snapY(bottomCm), top: snapY(topCm) },
    }))
    .filter(({ span, bottom, top }) => span.to > span.from && top > bottom)
    .toSorted((one, other) => one.bottom - other.bottom);
  const levels = [...new Set(snapped.flatMap(({ bottom, top }) => [bottom, top]))].toSorted(
    (one, other) => one - other,
  );
  const layers: Layer[] = [];
  let next = 0;
  let active: typeof snapped = [];
  levels.forEach((bottom, index) => {
    const top = levels[index + 1];
    if (top === undefined) return;
    active = active.filter((rectangle) => rectangle.top > bottom);
    for (let entering = snapped[next]; entering !== undefined && entering.bottom === bottom; entering = snapped[next]) {
      active.push(entering);
      next += 1;
    }
    const spans = merged(active.map(({ span }) => span));
    const below = layers.at(-1);
    if (below !== undefined && areSame(below.spans, spans)) layers[layers.length - 1] = { ...below, top };
    else layers.push({ bottom, top, spans });
  });
  return layers;
}

function areSame(spans: readonly Span[], others: readonly Span[]): boolean {
  return (
    spans.length === others.length &&
    spans.every(({ from, to }, index) => from === others[index]?.from && to === others[index]?.to)
  );
}

/** For each of the values the first of those that it is one with. */
function snap(values: readonly number[]): (value: number) => number {
  const firsts = new Map<number, number>();
  let last = Number.NEGATIVE_INFINITY;
  let first = last;
  for (const value of [...new Set(values)].toSorted((one, other) => one - other)) {
    if (value - last > SAME_CM) first = value;
    firsts.set(value, first);
    last = value;
  }
  return (value) => firsts.get(value) ?? value;
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

/** With the fabric on the left: up along right ends, down along left ends, and where one layer covers more than its neighbour. */
function edgesOf(layers: readonly Layer[]): Edge[] {
  const edges: Edge[] = layers.flatMap(({ bottom, top, spans }) =>
    spans.flatMap(({ from, to }): Edge[] => [
      [
        [to, bottom],
        [to, top],
      ],
      [
        [from, top],
        [from, bottom],
      ],
    ]),
  );
  for (let index = 0; index <= layers.length; index += 1) {
    const [below, above] = [layers[index - 1], layers[index]];
    const y = above?.bottom ?? below?.top ?? 0;
    for (const { from, to } of uncovered(above?.spans ?? [], below?.spans ?? []))
      edges.push([
        [from, y],
        [to, y],
      ]);
    for (const { from, to } of uncovered(below?.spans ?? [], above?.spans ?? []))
      edges.push([
        [to, y],
        [from, y],
      ]);
  }
  return edges;
}

/** What of some spans others leave free; both run from left to right. */
function uncovered(spans: readonly Span[], others: readonly Span[]): Span[] {
  return spans.flatMap(({ from, to }) => {
    const free: Span[] = [];
    let at = from;
    for (const other of others) {
      if (other.to <= at) continue;
      if (other.from >= to) break;
      if (other.from > at) free.push({ from: at, to: other.from });
      at = other.to;
    }
    if (at < to) free.push({ from: at, to });
    return free;
  });
}

/** Where two corners touch, the line keeps to its own fabric: it turns left. */
function followEdges(edges: readonly Edge[]): OutlinePoint[][] {
  const leaving = new Map<string, Edge[]>();
  for (const edge of edges) {
    const key = edge[0].join(" ");
    const found = leaving.get(key);
    if (found === undefined) leaving.set(key, [edge]);
    else found.push(edge);
  }
  const rings: OutlinePoint[][] = [];
  for (const first of edges) {
    const ring: OutlinePoint[] = [];
    for (let edge = take(leaving, first); edge !== undefined; edge = nextEdge(leaving, edge)) ring.push(edge[0]);
    if (ring.length > 0) rings.push(ring);
  }
  return rings;
}

function take(leaving: Map<string, Edge[]>, edge: Edge): Edge | undefined {
  const found = leaving.get(edge[0].join(" ")) ?? [];
  const index = found.indexOf(edge);
  return index < 0 ? undefined : found.splice(index, 1)[0];
}

function nextEdge(leaving: Map<string, Edge[]>, [from, to]: Edge): Edge | undefined {
  const found = leaving.get(to.join(" ")) ?? [];
  const [first, ...others] = found;
  if (first === undefined) return undefined;
  const turn = (edge: Edge) => (to[0] - from[0]) * (edge[1][1] - to[1]) - (to[1] - from[1]) * (edge[1][0] - to[0]);
  const leftmost = others.reduce((best, edge) => (turn(edge) > turn(best) ? edge : best), first);
  return take(leaving, leftmost);
}

function signedArea(ring: readonly OutlinePoint[]): number {
  return ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

function withoutStraight(ring: readonly OutlinePoint[]): OutlinePoint[] {
  return ring.filter(([x, y], index) => {
    const [beforeX, beforeY] = ring.at(index - 1) ?? [x, y];
    const [afterX, afterY] = ring[(index + 1) % ring.length] ?? [x, y];
    return (x - beforeX) * (afterY - y) !== (y - beforeY) * (afterX - x);
  });
}

function fromLowestLeft(ring: readonly OutlinePoint[]): OutlinePoint[] {
  let first = 0;
  ring.forEach(([x, y], index) => {
    const [bestX, bestY] = ring[first] ?? [x, y];
    if (y < bestY || (y === bestY && x < bestX)) first = index;
  });
  return [...ring.slice(first), ...ring.slice(0, first)];
}
