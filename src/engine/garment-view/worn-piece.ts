import type { GarmentPiece } from "../pattern";
import type { WorkedPiece } from "../garment";
import { boxOf, movedLine, type Box, type Line, type Move, type Place } from "./line";
import { smoothOutline } from "./smooth-outline";

/** One copy of a piece as it is worn, its lowest place at 0 and, where it is not worked from the side, its centre line at 0, cm. */
export interface WornPiece {
  readonly piece: GarmentPiece;
  readonly copy: number;
  readonly isTube: boolean;
  /** Closed, counter-clockwise. */
  readonly outline: Line;
  readonly box: Box;
  /** From the coordinates in which it is worked to those in which it is worn. */
  readonly move: Move;
}

type Start = NonNullable<GarmentPiece["start"]>;

/** Turned, never flipped, so that its right side stays in sight. */
const TURNS: Readonly<Record<Start, Move>> = {
  hem: asItIs,
  centre: asItIs,
  neck: ([x, y]) => [0 - x, 0 - y],
  side: ([x, y]) => [y, 0 - x],
};

/**
 * A worked piece as it is worn: work from the neck down is turned by half a turn, from the side by a quarter, so that its rows run
 * from left to right.
 *
 * @returns null where it has no fabric.
 */
export function wornPiece({ piece, copy, ring, rowCm, isTube }: WorkedPiece): WornPiece | null {
  const smooth = smoothOutline(ring, rowCm);
  if (smooth === null) return null;
  const { start = "hem" } = piece;
  const turn = TURNS[start];
  const turned = turn === asItIs ? smooth : movedLine(smooth, turn);
  const { leftCm, rightCm, bottomCm, topCm } = boxOf([turned]);
  const byCm = start === "side" ? -(leftCm + rightCm) / 2 : 0;
  const shift: Move = ([x, y]) => [x + byCm, y - bottomCm];
  const outline = byCm === 0 && bottomCm === 0 ? turned : movedLine(turned, shift);
  const box = { leftCm: leftCm + byCm, rightCm: rightCm + byCm, bottomCm: 0, topCm: topCm - bottomCm };
  return { piece, copy, isTube, outline, box, move: (place) => shift(turn(place)) };
}

function asItIs(place: Place): Place {
  return place;
}
