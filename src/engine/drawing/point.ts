/** A point of a drawing: cm to the right of the piece's middle, cm up from its lowest point. */
export interface Point {
  readonly xCm: number;
  readonly yCm: number;
}

/** A straight part of an edge; not sure if the pattern does not specify it or contradicts itself. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
  readonly isSure: boolean;
}

/** The segments between consecutive points, without those of zero length. */
export function segments(points: readonly Point[], isSure: boolean): Segment[] {
  return points.slice(1).flatMap((to, index) => {
    const from = points[index];
    return from === undefined || isSame(from, to) ? [] : [{ from, to, isSure }];
  });
}

function isSame(left: Point, right: Point): boolean {
  return isSameCm(left.xCm, right.xCm) && isSameCm(left.yCm, right.yCm);
}

const SAME_CM = 1e-9;

/** Whether two lengths are equal up to rounding. */
export function isSameCm(left: number, right: number): boolean {
  return Math.abs(left - right) < SAME_CM;
}
