import { ownValue } from "../pattern";
import type { DraftPattern, Typed } from "./draft-pattern";

type BySize = Readonly<Record<string, Typed>>;
type ForSizes = Typed | BySize;

/** The pattern without a size, also in every record by size. */
export function withoutSize(pattern: DraftPattern, size: string): DraftPattern {
  const sizes = pattern.sizes.filter(({ id }) => id !== size);
  return { ...everyRecord(pattern, (record) => withoutKey(record, size)), sizes };
}

/** The pattern with one more size at the end, still without numbers. */
export function withSize(pattern: DraftPattern, size: { readonly id: string; readonly label: string }): DraftPattern {
  return { ...pattern, sizes: [...pattern.sizes, { ...size, body: {} }] };
}

/** One number for all sizes as a number in each. */
export function spreadOverSizes(pattern: DraftPattern, value: ForSizes): BySize {
  if (typeof value === "object") return value;
  return Object.fromEntries(pattern.sizes.map(({ id }) => [id, value]));
}

/** One number for all sizes from a number in each: the first that exists. */
export function oneForAllSizes(pattern: DraftPattern, value: ForSizes): Typed {
  if (typeof value !== "object") return value;
  return pattern.sizes.map(({ id }) => ownValue(value, id)).find((typed) => typed !== undefined) ?? "";
}

function everyRecord(pattern: DraftPattern, change: (record: BySize) => BySize): DraftPattern {
  const perSize = (value: ForSizes): ForSizes => (typeof value === "object" ? change(value) : value);
  const { grading, lengths } = pattern;
  return {
    ...pattern,
    counts: pattern.counts.map((count) => (count.locked ? { ...count, locked: change(count.locked) } : count)),
    ...(lengths && { lengths: lengths.map((item) => ({ ...item, cm: perSize(item.cm) })) }),
    allowances: pattern.allowances.map((item) => ({ ...item, cm: perSize(item.cm) })),
    measurements: pattern.measurements.map((item) => {
      const { target } = item;
      if (target === undefined) return item;
      if ("cm" in target) return { ...item, target: { cm: change(target.cm) } };
      return { ...item, target: { ...target, easeCm: perSize(target.easeCm) } };
    }),
    ...(grading && {
      grading: Object.fromEntries(Object.entries(grading).map(([count, record]) => [count, change(record)])),
    }),
  };
}

function withoutKey(record: BySize, key: string): BySize {
  return Object.fromEntries(Object.entries(record).filter(([name]) => name !== key));
}
