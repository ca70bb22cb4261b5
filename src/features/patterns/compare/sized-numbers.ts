import { cmOfSize, ownValue, type CmBySize, type PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { allowanceWords, formatExactLength } from "@/ui/format-exact-length";
import { bodyLabel } from "../pattern-copy";

/** How to read a number: `sign` for lengths whose sign means that they add or take. */
type Reading = "count" | "cm" | "sign";

/** One of a pattern's numbers that may differ by size. */
interface SizedNumber {
  readonly key: string;
  readonly label: string;
  readonly reading: Reading;
  /** The number that stands for all sizes, where one does. */
  readonly one?: number;
  /** Undefined where it has none in that size. */
  readonly valueOf: (size: string) => number | undefined;
}

export type SizedPart = "counts" | "lengths" | "allowances" | "targets" | "bodies";

/** A pattern's numbers by size, by the part that they belong to, in the pattern's order. */
export function sizedNumbers(pattern: PatternDocument): Readonly<Record<SizedPart, readonly SizedNumber[]>> {
  return {
    counts: pattern.counts.map(({ id, label }) => ({
      key: id,
      label,
      reading: "count",
      valueOf: (size) => ownValue(ownValue(pattern.grading, id), size),
    })),
    lengths: (pattern.lengths ?? []).map((length) => lengthNumber(pattern, { ...length, reading: "cm" })),
    allowances: pattern.allowances.map((allowance) => lengthNumber(pattern, { ...allowance, reading: "sign" })),
    targets: pattern.measurements.flatMap(({ id, label, target }) => {
      if (target === undefined) return [];
      return "cm" in target
        ? [lengthNumber(pattern, { id: `${id}.cm`, label: `Target of ${label}`, cm: target.cm, reading: "cm" })]
        : [lengthNumber(pattern, { id: `${id}.ease`, label: `Ease of ${label}`, cm: target.easeCm, reading: "sign" })];
    }),
    bodies: bodyNumbers(pattern),
  };
}

interface NamedLength {
  readonly id: string;
  readonly label: string;
  readonly cm: CmBySize;
  readonly reading: Reading;
}

function lengthNumber({ sizes }: PatternDocument, { id, label, cm, reading }: NamedLength): SizedNumber {
  const known = new Set(sizes.map((size) => size.id));
  return {
    key: id,
    label,
    reading,
    ...(typeof cm === "number" ? { one: cm } : {}),
    valueOf: (size) => (known.has(size) ? cmOfSize(cm, size) : undefined),
  };
}

function bodyNumbers(pattern: PatternDocument): SizedNumber[] {
  const ids = [...new Set(pattern.sizes.flatMap(({ body }) => Object.keys(body)))];
  return ids.map((id) => ({
    key: id,
    label: bodyLabel(pattern, id),
    reading: "cm",
    valueOf: (size) => ownValue(pattern.sizes.find((known) => known.id === size)?.body, id),
  }));
}

/** A number with its unit; the sign of an edging or an ease is a word. */
export function sizedWords(cm: number, reading: Reading, unit: LengthUnit): string {
  switch (reading) {
    case "count":
      return String(cm);
    case "cm":
      return `${formatExactLength(cm, unit)} ${unit}`;
    case "sign":
      return allowanceWords(cm, unit);
  }
}
