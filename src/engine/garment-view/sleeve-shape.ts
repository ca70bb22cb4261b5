import { movedLine, reversedLine, straightTo, type Line, type Move, type Place } from "./line";
import { rightSide } from "./side-chain";
import type { Shape } from "./view";
import type { WornPiece } from "./worn-piece";

/** A sleeve folded along its middle: `across` from the fold to the underarm edge, up from the cuff, cm. */
export interface FoldedSleeve {
  readonly piece: string;
  /** Underarm edge from the cuff up, in its own coordinates. */
  readonly edge: Line;
  readonly underarm: Place;
  /** Height of its highest row, and half of that row's width: of a raglan's neck. */
  readonly topCm: number;
  readonly topAcrossCm: number;
  /** From the worn piece to the folded one. */
  readonly fold: Move;
}

/**
 * Folds a sleeve: a tube lies as it is worked, of a flat one half is seen.
 *
 * @returns null where it has no shape.
 */
export function foldedSleeve({ piece, outline, isTube }: WornPiece): FoldedSleeve | null {
  const times = isTube ? 2 : 1;
  const side = rightSide(movedLine(outline, ([x, y]) => [x * times, y]));
  if (side === null) return null;
  const { from, stretches } = side.line;
  const ends = [from, ...stretches.map(({ to }) => to)];
  const widestCm = ends.reduce((most, [x]) => Math.max(most, x), 0);
  const underarmAt = ends.findLastIndex(([x]) => x > widestCm - 0.05);
  const topCm = ends.reduce((most, [, y]) => Math.max(most, y), 0);
  const topEnd = ends.find(([, y]) => y > topCm - 0.1) ?? from;
  return {
    piece: piece.id,
    edge: { from, stretches: stretches.slice(0, underarmAt) },
    underarm: ends[underarmAt] ?? from,
    topCm,
    topAcrossCm: topEnd[0],
    fold: ([x, y]) => [(x * times + widthAt(ends, y)) / 2, y],
  };
}

/** How far out a side lies at a height, straight from each of its places to the next, cm. */
function widthAt(ends: readonly Place[], y: number): number {
  const above = ends.findIndex(([, endY]) => endY >= y);
  const [low, high] = [ends[Math.max(above - 1, 0)], ends[above] ?? ends.at(-1)];
  if (low === undefined || high === undefined) return 0;
  const share = high[1] === low[1] ? 1 : Math.min(1, Math.max(0, (y - low[1]) / (high[1] - low[1])));
  return low[0] + share * (high[0] - low[0]);
}

/** Where a sleeve lies in the garment, at its right. */
export interface SleevePlace {
  readonly place: Move;
}

/**
 * Turns a sleeve so that one of its places falls on one of the garment and another one in the same direction.
 *
 * @param own places of the folded sleeve, `to` those of the garment, each from the underarm up.
 */
export function sleevePlace(own: readonly [Place, Place], to: readonly [Place, Place]): SleevePlace {
  const [[fromX, fromY], [toX, toY]] = own;
  const direction = Math.atan2(toY - fromY, -(toX - fromX));
  const angle = Math.atan2(to[1][1] - to[0][1], to[1][0] - to[0][0]) - direction;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const place: Move = ([x, y]) => {
    const [across, up] = [-(x - fromX), y - fromY];
    return [to[0][0] + across * cos - up * sin, to[0][1] + across * sin + up * cos];
  };
  return { place };
}

/** Moves both ends of a tape. */
export type MoveTape = (ends: readonly [Place, Place]) => readonly [Place, Place];

/** A tape on a sleeve that is turned; one along it keeps its distance from the fold. */
export function placedTape({ fold }: FoldedSleeve, { place }: SleevePlace): MoveTape {
  return ([from, to]) => {
    const [one, other] = [fold(from), fold(to)];
    const isAlong = Math.abs(from[0] - to[0]) < Math.abs(from[1] - to[1]) / 5;
    const across = Math.min(one[0], other[0]);
    return isAlong ? [place([across, one[1]]), place([across, other[1]])] : [place(one), place(other)];
  };
}

/**
 * A sleeve at the right of the garment. Its edges are drawn from the underarm about the cuff to the shoulder; the fabric goes on
 * beneath the body, so that no gap shows where they meet.
 *
 * @param shoulder lines from the fold, at the height of the underarm or the top, to the garment's shoulder.
 * @param within a place beneath the body.
 */
export function sleeveShape(
  { edge, piece }: FoldedSleeve,
  { place }: SleevePlace,
  { head, within }: { readonly head: Line; readonly within: readonly Place[] },
): Shape {
  const under = movedLine(reversedLine(edge), place);
  const cuffFold = place([0, edge.from[1]]);
  const open: Line = {
    from: under.from,
    stretches: [...under.stretches, straightTo(cuffFold), straightTo(head.from), ...head.stretches],
  };
  return {
    piece,
    fabric: { from: open.from, stretches: [...open.stretches, ...within.map(straightTo), straightTo(open.from)] },
    edges: [open],
    isBehind: false,
  };
}

export function mirroredShape({ piece, fabric, edges, isBehind }: Shape): Shape {
  const flip: Move = ([x, y]) => [0 - x, y];
  return { piece, fabric: movedLine(fabric, flip), edges: edges.map((edge) => movedLine(edge, flip)), isBehind };
}
