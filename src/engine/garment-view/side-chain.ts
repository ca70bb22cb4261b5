import { movedLine, reversedLine, type Line, type Place, type Stretch } from "./line";

/** The right side of an outline, from its lower corner up to its top. */
export interface SideChain {
  readonly line: Line;
  /** The corner of shoulder and neck, or the top. */
  readonly neck: Place;
  /** The outer end of the shoulder; where it has none, as of a raglan, `neck`. */
  readonly shoulder: Place;
  /** Where the armhole begins; null where nothing is shaped there. */
  readonly underarm: Place | null;
}

/** So near to the highest or lowest place is as high or as low, cm. */
const LEVEL_CM = 0.3;
/** A shoulder is no steeper than this. */
const SHOULDER_RISE = 1;
/** An underarm lies at least at this share of the height, above borders. */
const UNDERARM_SHARE = 0.3;

/**
 * The right side of a closed outline, seen from its centre line at x = 0.
 *
 * @param outline counter-clockwise.
 */
export function rightSide(outline: Line): SideChain | null {
  const lowest = cornerOf(outline);
  if (lowest === null) return null;
  const { start, bottomCm, topCm } = lowest;
  const count = outline.stretches.length;
  const from = outline.stretches[start]?.to ?? outline.from;
  const stretches: Stretch[] = [];
  for (let step = 1; step <= count; step += 1) {
    const stretch = outline.stretches[(start + step) % count];
    if (stretch === undefined || stretch.to[0] <= 0) break;
    const last = stretches.at(-1)?.to ?? from;
    if (last[1] > topCm - LEVEL_CM && stretch.to[1] < last[1] - 0.01) break;
    stretches.push(stretch);
  }
  const neck = stretches.at(-1)?.to ?? from;
  const corners = stretches.filter(({ isCorner }) => isCorner).map(({ to }) => to);
  const below = corners.filter((corner) => corner !== neck);
  const last = below.at(-1);
  const isShoulder =
    last !== undefined &&
    Math.abs(last[1] - neck[1]) <= SHOULDER_RISE * Math.abs(last[0] - neck[0]) &&
    last[1] > from[1] + LEVEL_CM;
  const shoulder = isShoulder ? last : neck;
  const heightCm = topCm - bottomCm;
  const underarm =
    below
      .filter(
        (corner) =>
          corner !== shoulder && corner[1] > bottomCm + UNDERARM_SHARE * heightCm && corner[1] < shoulder[1] - LEVEL_CM,
      )
      .findLast((corner) => corner[0] > shoulder[0] + 0.2) ?? null;
  return { line: { from, stretches }, neck, shoulder, underarm };
}

/** The left side as a right one, mirrored. */
export function leftSide(outline: Line): SideChain | null {
  return rightSide(reversedLine(movedLine(outline, mirrored)));
}

export function mirrored([x, y]: Place): Place {
  return [0 - x, y];
}

/** Where the right side begins: the stretch that ends at its lower corner; and how low and high the right side reaches. */
function cornerOf({ stretches }: Line): { start: number; bottomCm: number; topCm: number } | null {
  let [bottomCm, topCm] = [Infinity, -Infinity];
  for (const { to } of stretches) {
    if (to[0] <= 0) continue;
    bottomCm = Math.min(bottomCm, to[1]);
    topCm = Math.max(topCm, to[1]);
  }
  let [start, outermost] = [-1, 0];
  for (const [index, { to }] of stretches.entries())
    if (to[1] < bottomCm + LEVEL_CM && to[0] > outermost) [start, outermost] = [index, to[0]];
  return start < 0 ? null : { start, bottomCm, topCm };
}
