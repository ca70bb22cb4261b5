import { ownValue, type CmBySize, type Measurement, type PatternDocument } from "../pattern";

type EditKind = "count" | "allowance" | "length" | "ease" | "target";

/** An editable number of a pattern. */
export interface EditField {
  /** As in `patternChanges`: `grading.<count>.<size>`, `allowances.<id>.cm.<size>`, `measurements.<id>.target.easeCm`. */
  readonly path: string;
  readonly kind: EditKind;
  readonly id: string;
  readonly label: string;
  /** Null where one number stands for all sizes. */
  readonly size: { readonly id: string; readonly label: string } | null;
  /** Cm, or a whole number for a count; undefined if it has no value yet. */
  readonly value: number | undefined;
}

/**
 * The numbers of a pattern that people edit: counts, allowances, lengths, and the ease or the length of targets.
 *
 * @returns in the pattern's order, each through the sizes; measurements without a target are skipped.
 */
export function editFields(pattern: PatternDocument): EditField[] {
  return [
    ...pattern.counts.flatMap(({ id, label }) =>
      pattern.sizes.map((size) => ({
        path: `grading.${id}.${size.id}`,
        kind: "count" as const,
        id,
        label,
        size,
        value: ownValue(ownValue(pattern.grading, id), size.id),
      })),
    ),
    ...pattern.allowances.flatMap((item) =>
      cmFields(pattern, { ...item, kind: "allowance", path: `allowances.${item.id}.cm` }),
    ),
    ...(pattern.lengths ?? []).flatMap((item) =>
      cmFields(pattern, { ...item, kind: "length", path: `lengths.${item.id}.cm` }),
    ),
    ...pattern.measurements.flatMap((measurement) => targetFields(pattern, measurement)),
  ];
}

function targetFields(pattern: PatternDocument, { id, label, target }: Measurement): EditField[] {
  if (target === undefined) return [];
  const path = `measurements.${id}.target`;
  if ("cm" in target) return cmFields(pattern, { id, label, kind: "target", path: `${path}.cm`, cm: target.cm });
  return cmFields(pattern, { id, label, kind: "ease", path: `${path}.easeCm`, cm: target.easeCm });
}

/** One field where a number stands for all sizes, else one a size. */
function cmFields(
  { sizes }: PatternDocument,
  { cm, path, kind, id, label }: Pick<EditField, "path" | "kind" | "id" | "label"> & { readonly cm: CmBySize },
): EditField[] {
  if (typeof cm === "number") return [{ path, kind, id, label, size: null, value: cm }];
  return sizes.map((size) => ({ path: `${path}.${size.id}`, kind, id, label, size, value: ownValue(cm, size.id) }));
}
