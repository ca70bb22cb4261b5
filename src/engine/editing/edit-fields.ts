import { ownValue, type CmBySize, type Measurement, type PatternDocument } from "../pattern";

type EditKind = "count" | "allowance" | "length" | "ease" | "target";

/** An editable number of a pattern, with the path under which a draft stores the typed text. */
export interface EditField {
  /** `grading.<count>.<size>`, `allowances|lengths|targets.<id>.<size|all>`. */
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
    ...pattern.allowances.flatMap((item) => bySize(pattern, { ...item, kind: "allowance", list: "allowances" })),
    ...(pattern.lengths ?? []).flatMap((item) => bySize(pattern, { ...item, kind: "length", list: "lengths" })),
    ...pattern.measurements.flatMap((measurement) => targetFields(pattern, measurement)),
  ];
}

function targetFields(pattern: PatternDocument, { id, label, target }: Measurement): EditField[] {
  if (target === undefined) return [];
  const given =
    "cm" in target ? ({ kind: "target", cm: target.cm } as const) : ({ kind: "ease", cm: target.easeCm } as const);
  return bySize(pattern, { id, label, list: "targets", ...given });
}

function bySize(
  pattern: PatternDocument,
  { id, label, cm, kind, list }: { id: string; label: string; cm: CmBySize; kind: EditKind; list: string },
): EditField[] {
  if (typeof cm === "number") return [{ path: `${list}.${id}.all`, kind, id, label, size: null, value: cm }];
  return pattern.sizes.map((size) => ({
    path: `${list}.${id}.${size.id}`,
    kind,
    id,
    label,
    size,
    value: ownValue(cm, size.id),
  }));
}
