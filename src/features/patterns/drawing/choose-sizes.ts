import type { PatternDocument, Size } from "@/engine/pattern";

/** No size has this id (docs/documents.md#rules-for-all-documents). */
export const ALL_SIZES = "all";

/**
 * The requested sizes: one by its id, all of them, or by default the smallest.
 *
 * @returns null where there is no such size.
 */
export function chooseSizes(
  { sizes }: PatternDocument,
  asked: string | readonly string[] | null,
): readonly Size[] | null {
  if (asked === ALL_SIZES) return sizes;
  const size = asked === null ? sizes[0] : sizes.find(({ id }) => id === asked);
  return size === undefined ? null : [size];
}
