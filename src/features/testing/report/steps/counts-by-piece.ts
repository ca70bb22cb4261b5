import { countsOfStep, stepsOfPiece, type Count, type PatternDocument } from "@/engine/pattern";

/** Counts that belong together while a garment is made. */
export interface CountGroup {
  readonly label: string;
  readonly counts: readonly Count[];
}

/** Counts under the first piece that uses them, in the order of its steps; those of no piece last. */
export function countsByPiece({ garment, counts }: Pick<PatternDocument, "garment" | "counts">): CountGroup[] {
  const left = new Map(counts.map((count) => [count.id, count]));
  const groups = garment.pieces.map(({ id, label }) => ({
    label,
    counts: stepsOfPiece(garment, id)
      .flatMap(countsOfStep)
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
