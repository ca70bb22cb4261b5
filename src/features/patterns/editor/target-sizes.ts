import type { DraftPattern, Typed } from "@/engine/editing";

type BySize = Readonly<Record<string, Typed>>;

/** A record by size with texts in it, from a size on; a row and a column of a spreadsheet read alike. */
export function withTypedSizes(
  { sizes }: DraftPattern,
  record: BySize,
  { texts, from }: { readonly texts: readonly string[]; readonly from: number },
): BySize {
  const typed = sizes.slice(from).flatMap(({ id }, index): [string, Typed][] => {
    const text = texts[index]?.trim();
    return text === undefined ? [] : [[id, text]];
  });
  return { ...record, ...Object.fromEntries(typed) };
}
