import type { GarmentPiece } from "../pattern";
import type { GarmentWork } from "./garment-work";

/** How many copies each of those that are worked stands for: the others are like the first of their hand. */
export function timesMade(work: GarmentWork, piece: GarmentPiece): Map<number, number> {
  const apart = work.copiesOfPiece(piece);
  const times = new Map(apart.map((copy) => [copy, 1]));
  for (const hand of piece.mirrored ? [1, 2] : [1]) {
    const made = piece.mirrored ? Math.floor((piece.made + 2 - hand) / 2) : piece.made;
    const worked = apart.filter((copy) => !piece.mirrored || copy % 2 === hand % 2).length;
    if (made > worked) times.set(hand, 1 + made - worked);
  }
  return times;
}
