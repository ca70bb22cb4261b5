import { ownValue, type Count, type PatternDocument } from "@/engine/pattern";
import type { NumberChange } from "@/features/calls/correction-schema";

/** A count with the number that its text gives in each size. */
export interface CountNumbers extends Pick<Count, "id" | "label" | "direction"> {
  readonly sizes: readonly CountOfSize[];
}

interface CountOfSize {
  readonly id: string;
  readonly label: string;
  /** By the newest correction, else by the newest revision; null where neither gives one. */
  readonly was: number | null;
}

/** @param published what the corrections so far change, the newest first. */
export function countNumbers(
  { counts, sizes, grading }: Pick<PatternDocument, "counts" | "sizes" | "grading">,
  published: readonly NumberChange[],
): CountNumbers[] {
  return counts.map(({ id, label, direction }) => ({
    ...{ id, label, direction },
    sizes: sizes.map((size) => {
      const corrected = published.find((change) => change.count === id && change.size === size.id)?.becomes;
      return { id: size.id, label: size.label, was: corrected ?? ownValue(ownValue(grading, id), size.id) ?? null };
    }),
  }));
}
