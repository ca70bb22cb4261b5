import type { DraftPattern, Typed } from "@/engine/editing";
import type { Choice } from "./fields";

export type DraftTarget = NonNullable<DraftPattern["measurements"][number]["target"]>;
export type BodyTarget = Extract<DraftTarget, { readonly body: string }>;
export type LengthTarget = Exclude<DraftTarget, BodyTarget>;
export type TargetKind = "none" | "body" | "lengths";

export interface TargetEdit<Target extends DraftTarget> {
  readonly target: Target;
  /** Index of its measurement in the list. */
  readonly index: number;
  /** Id of its measurement, under which questions about unusual numbers are filed. */
  readonly measurement: string;
  readonly onTarget: (next: DraftTarget, field: string | null) => void;
}

export function targetKind(target: DraftTarget | undefined): TargetKind {
  if (target === undefined) return "none";
  return "cm" in target ? "lengths" : "body";
}

/** An empty target of another kind. */
export function newTarget(pattern: DraftPattern, kind: TargetKind): DraftTarget | undefined {
  switch (kind) {
    case "none":
      return undefined;
    case "body":
      return { body: "", easeCm: 0 };
    case "lengths":
      return { cm: Object.fromEntries(pattern.sizes.map(({ id }): [string, Typed] => [id, ""])) };
  }
}

/** The body measurements that the pattern describes, and those that only its sizes have. */
export function bodyChoices({ bodyMeasurements = [], sizes }: DraftPattern): Choice[] {
  const known = new Set(bodyMeasurements.map(({ id }) => id));
  const others = new Set(sizes.flatMap(({ body }) => Object.keys(body)).filter((id) => !known.has(id)));
  return [
    ...bodyMeasurements.map(({ id, label }) => ({ value: id, label: label || id })),
    ...[...others].map((id) => ({ value: id, label: id })),
  ];
}

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
