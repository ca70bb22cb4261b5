import type { Piece } from "../pattern";
import type { Working } from "./working";

/**
 * Stitches worked in all copies of a piece: made × Σ over its sections of rows × (from + to) ÷ 2.
 *
 * @returns stitches; a half where an odd sum is worked over an odd number of rows.
 */
export function stitchesOfPiece(piece: Piece, { countOf }: Working): number {
  let stitches = 0;
  for (const { from, to, rows } of piece.sections) stitches += (countOf(rows) * (countOf(from) + countOf(to))) / 2;
  return piece.made * stitches;
}
