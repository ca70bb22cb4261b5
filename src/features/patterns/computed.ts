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

/** The same, by size id: only the sizes that are asked for are computed. */
function perSize<Result>(
  compute: (pattern: PatternDocument, size: string) => Result,
): (pattern: PatternDocument, size: string) => Result {
  const sizesOf = perPattern(() => new Map<string, { readonly result: Result }>());
  return (pattern, size) => {
    const known = sizesOf(pattern);
    const { result } = known.get(size) ?? { result: compute(pattern, size) };
    known.set(size, { result });
    return result;
  };
}

/** What a pattern's garment measures in each size. */
export const finishedOfPattern = perPattern(finishedMeasurements);

/** The drawings of a pattern's garment and pieces in a size. */
export const viewsInSize = perSize((pattern, size): GarmentView => garmentView(pattern, pattern.grading ?? {}, size));

/** The garment put together, where it is known how its pieces meet, then each piece. */
export function drawnIn({ garment, pieces }: GarmentView): DrawingView[] {
  return [...(garment === null ? [] : [garment]), ...pieces];
}

/** The garment put together in each size in which it can be. */
export function garmentInSizes(pattern: PatternDocument): DrawingView[] {
  return pattern.sizes.flatMap(({ id }) => viewsInSize(pattern, id).garment ?? []);
}

/** The size that stands for all where one is shown. */
export function middleSize({ sizes }: PatternDocument): Size | undefined {
  return sizes[Math.floor(sizes.length / 2)];
}
