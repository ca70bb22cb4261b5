import { drawPieces, type PieceShape } from "@/engine/drawing";
import { garmentView, type DrawingView, type GarmentView } from "@/engine/garment-view";
import type { PatternDocument, Size } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";

/**
 * Caches what is computed from a pattern for as long as the document exists: `storedPattern` returns the same immutable object each time.
 */
function perPattern<Result>(compute: (pattern: PatternDocument) => Result): (pattern: PatternDocument) => Result {
  const known = new WeakMap<PatternDocument, Result>();
  return (pattern) => {
    const before = known.get(pattern);
    if (before !== undefined) return before;
    const result = compute(pattern);
    known.set(pattern, result);
    return result;
  };
}

/** What a pattern's garment measures in each size. */
export const finishedOfPattern = perPattern(finishedMeasurements);

/** The shapes of a pattern's pieces in its middle size. */
export const middleShapesOfPattern = perPattern((pattern): readonly PieceShape[] => {
  const middle = middleSize(pattern);
  return middle === undefined ? [] : drawPieces(pattern, middle.id);
});

/** The drawing of a pattern's garment in its middle size; null where it is not known how its pieces meet. */
export const middleGarmentOfPattern = perPattern((pattern): DrawingView | null => {
  const middle = middleSize(pattern);
  return middle === undefined ? null : (garmentView(pattern, pattern.grading ?? {}, middle.id)?.garment ?? null);
});

/** The shapes of a pattern's pieces, by size id. */
export const shapesOfPattern = perPattern(
  (pattern): ReadonlyMap<string, readonly PieceShape[]> =>
    new Map(pattern.sizes.map(({ id }) => [id, drawPieces(pattern, id)])),
);

/** The drawings of a pattern's garment and pieces, by size id; null where a count has no number in a size. */
export const viewsOfPattern = perPattern((pattern): ReadonlyMap<string, GarmentView | null> => {
  return new Map(pattern.sizes.map(({ id }) => [id, garmentView(pattern, pattern.grading ?? {}, id)]));
});

/** The size that stands for all where one is shown. */
export function middleSize({ sizes }: PatternDocument): Size | undefined {
  return sizes[Math.floor(sizes.length / 2)];
}
