import type { OutlinePoint } from "../garment";
import type { Line, Stretch } from "./line";
import { slopeCurve } from "./slope-curve";
import { stepEnds, type StepEnd } from "./step-ends";
import { cross, distance, dot, minus, unit } from "./vector";

const DEGREE = Math.PI / 180;
/** Turns from which the fabric has a corner, outwards and inwards. */
const CORNER = { outward: 50 * DEGREE, inward: 100 * DEGREE };
const CORNER_BETWEEN_STRAIGHT = { outward: 15 * DEGREE, inward: 35 * DEGREE };
/** Places that are nearer to each other are one, cm: a tenth of what a pen is wide. */
const SAME_CM = 0.004;

/**
 * The line that a schematic shows of a stepped outline: slopes and curves smooth through the upright end of each of their steps,
 * straight edges and true corners as they are. For the eye alone; what is checked and counted is the stepped outline.
 *
 * @param ring a stepped outline as `traceOutline` has it, cm.
 * @param rowCm height of a row, cm.
 * @returns a closed line, counter-clockwise, through the steps in the ring's order; null where there is no fabric.
 * @see slopeCurve
 * @see docs/method.md#schematic.
 */
export function smoothOutline(ring: readonly OutlinePoint[], rowCm: number): Line | null {
  const ends = apart(stepEnds(ring, rowCm));
  const first = ends.findIndex(({ upright }) => upright === null);
  const start = ends[first];
  if (start === undefined || ends.length < 3) return null;
  const inOrder = [...ends.slice(first), ...ends.slice(0, first), start];
  const stretches: Stretch[] = [];
  let from = 0;
  for (let to = 1; to < inOrder.length; to += 1) {
    if (inOrder[to]?.upright !== null) continue;
    stretches.push(...stretchesBetween(inOrder, { from, to, rowCm }));
    from = to;
  }
  return { from: start.at, stretches };
}

/** Of places that fall together one, which is a corner if any of them is. */
function apart(ends: readonly StepEnd[]): StepEnd[] {
  const kept: StepEnd[] = [];
  for (const end of ends) {
    const last = kept.at(-1);
    if (last === undefined || distance(last.at, end.at) > SAME_CM) kept.push(end);
    else kept[kept.length - 1] = { ...end, upright: last.upright && end.upright };
  }
  const [first, last] = [kept[0], kept.at(-1)];
  if (first === undefined || last === undefined || kept.length < 2 || distance(first.at, last.at) > SAME_CM)
    return kept;
  return [{ ...first, upright: last.upright && first.upright }, ...kept.slice(1, -1)];
}

/** From one corner or straight edge's end to the next, steps between them. */
function stretchesBetween(
  ends: readonly StepEnd[],
  { from, to, rowCm }: { readonly from: number; readonly to: number; readonly rowCm: number },
): Stretch[] {
  const [one, other] = [ends[from], ends[to]];
  if (one === undefined || other === undefined) return [];
  const isCorner = isCornerAt(ends, to);
  if (to === from + 1) return [{ to: other.at, by: null, isCorner }];
  const [before, after] = [neighbour(ends, from, -1), neighbour(ends, to, 1)];
  const slope = slopeCurve(
    {
      from: one.at,
      to: other.at,
      leave: before.isStraightAfter && !isCornerAt(ends, from) ? unit(minus(one.at, before.at)) : null,
      arrive: other.isStraightAfter && !isCorner ? unit(minus(after.at, other.at)) : null,
      steps: ends.slice(from + 1, to),
    },
    rowCm,
  );
  return slope.map((stretch, index) => (index === slope.length - 1 ? { ...stretch, isCorner } : stretch));
}

/** The list is closed: its last is its first. */
function neighbour(ends: readonly StepEnd[], index: number, by: 1 | 0 | -1): StepEnd {
  const count = ends.length - 1;
  return ends[(index + by + count) % count] as StepEnd;
}

function isCornerAt(ends: readonly StepEnd[], index: number): boolean {
  const [before, end, after] = [neighbour(ends, index, -1), neighbour(ends, index, 0), neighbour(ends, index, 1)];
  const [from, to] = [minus(end.at, before.at), minus(after.at, end.at)];
  const turn = Math.atan2(cross(from, to), dot(from, to));
  const corner = before.isStraightAfter && end.isStraightAfter ? CORNER_BETWEEN_STRAIGHT : CORNER;
  return turn >= 0 ? turn > corner.outward : -turn > corner.inward;
}
