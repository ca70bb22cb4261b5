import type { Count, PatternDocument } from "@/engine/pattern";

/** Counts that belong together while a garment is made. */
export interface CountGroup {
  readonly label: string;
  readonly counts: readonly Count[];
}

/** Counts under the first piece that uses them, in the order of its sections; those of no piece last. */
export function countsByPiece({ pieces, counts }: Pick<PatternDocument, "pieces" | "counts">): CountGroup[] {
  const left = new Map(counts.map((count) => [count.id, count]));
  const groups = pieces.map(({ label, sections }) => ({
    label,
    counts: sections
      .flatMap(({ from, to, rows }) => [from, to, rows])
      .flatMap((id) => {
        const count = left.get(id);
        left.delete(id);
        return count ?? [];
      }),
  }));
  const others = [...left.values()];
  const last = { label: groups.some((group) => group.counts.length > 0) ? "Other counts" : "Counts", counts: others };
  return [...groups, last].filter((group) => group.counts.length > 0);
}
