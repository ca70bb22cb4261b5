import type { DraftPattern } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";

/** The pattern with one more count at the end, in its first fabric. */
export function withNewCount(pattern: DraftPattern, label: string, direction: "stitches" | "rows"): DraftPattern {
  const id = uniqueSlug(label === "" ? direction : label, new Set(pattern.counts.map((count) => count.id)));
  const fabric = pattern.fabrics[0]?.id ?? "";
  return { ...pattern, counts: [...pattern.counts, { id, label, fabric, direction }] };
}
