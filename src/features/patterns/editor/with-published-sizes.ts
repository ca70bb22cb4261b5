import { withoutSize, type DraftPattern } from "@/engine/editing";
import type { PatternDocument } from "@/engine/pattern";
import { uniqueSlug } from "@/engine/tables";
import { bodyRows } from "./body-rows";

export type ReadySizes = Required<Pick<PatternDocument, "bodyMeasurements" | "sizes" | "sizeBy">>;

/**
 * The pattern with its sizes replaced. A size with the same label stays the same size, with its numbers in every list; missing numbers of new sizes are reported there.
 */
export function withPublishedSizes(pattern: DraftPattern, ready: ReadySizes): DraftPattern {
  const taken = new Set<string>();
  const sizes = ready.sizes.map((size) => {
    const same = pattern.sizes.find(({ id, label }) => label === size.label && !taken.has(id));
    if (same === undefined) return { ...size, id: uniqueSlug(size.id, taken) };
    taken.add(same.id);
    return { ...same, body: { ...same.body, ...size.body } };
  });
  const gone = pattern.sizes.filter(({ id }) => !taken.has(id));
  const kept = gone.reduce((now, { id }) => withoutSize(now, id), pattern);
  const rows = bodyRows(pattern);
  const added = ready.bodyMeasurements.filter(({ id }) => rows.every((row) => row.id !== id));
  return { ...kept, sizes, bodyMeasurements: [...rows, ...added], sizeBy: ready.sizeBy };
}
