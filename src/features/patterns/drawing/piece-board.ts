import { stepsInSizes, type StepInSizes } from "@/engine/garment";
import type { DrawingView } from "@/engine/garment-view";
import type { GarmentPiece, PatternDocument, Size } from "@/engine/pattern";
import { viewsInSize } from "../computed";

/** A piece as shown, through all sizes of the pattern. */
export interface PieceBoard {
  readonly piece: GarmentPiece;
  /** Null in a size in which nothing of it is worked. */
  readonly views: readonly { readonly size: Size; readonly view: DrawingView | null }[];
  readonly steps: readonly StepInSizes[];
}

/** @returns one board per piece, in the pattern's order. */
export function pieceBoards(pattern: PatternDocument): PieceBoard[] {
  const drawn = pattern.sizes.map((size) => ({ size, pieces: viewsInSize(pattern, size.id).pieces }));
  return stepsInSizes(pattern).pieces.map(({ piece, steps }) => ({
    ...{ piece, steps },
    views: drawn.map(({ size, pieces }) => ({ size, view: pieces.find((view) => view.piece === piece.id) ?? null })),
  }));
}

/** Its drawings among those of some sizes. */
export function viewsOf({ views }: PieceBoard, sizes: readonly Size[]): DrawingView[] {
  return views.flatMap(({ size, view }) => (view !== null && sizes.includes(size) ? [view] : []));
}
