/**
 * Names of the fields of a tester's report, and the options of those with a fixed choice.
 *
 * A field is named by ids and short keys, never by its position in a list, so that entries from two devices are merged field by
 * field. This file imports nothing, so that a page in the browser can name its fields without a schema library.
 */

/** Field name → text as typed. */
export type TypedReport = Readonly<Record<string, string>>;

const SWATCH_PARTS = [
  "fabric",
  "toolMm",
  "stitches",
  "across",
  "rows",
  "along",
  "beforeStitches",
  "beforeAcross",
  "beforeRows",
  "beforeAlong",
  "washed",
  "blocking",
  "on",
  "worked",
  "used",
  "kept",
] as const;
const READING_PARTS = ["value", "way", "state", "kept"] as const;
const YARN_PARTS = [
  "yarn",
  "how",
  "before",
  "after",
  "balls",
  "gramsPerBall",
  "metresPerBall",
  "swatchInWeight",
  "tailsInWeight",
  "seamsInWeight",
  "label",
  "strands",
  "kept",
] as const;
const FIT_PARTS = ["scale", "says", "prefers"] as const;

export type SwatchPart = (typeof SWATCH_PARTS)[number];
export type ReadingPart = (typeof READING_PARTS)[number];
export type YarnPart = (typeof YARN_PARTS)[number];
export type FitPart = (typeof FIT_PARTS)[number];

/** Options of the fields with a fixed choice; blank where nothing is chosen. */
export const CHOICES = {
  yesNo: ["yes", "no"],
  on: ["swatch", "garment"],
  worked: ["flat", "round"],
  /** `flat`: the width laid flat, which we double; `flat doubled`: the tester has doubled it already. */
  way: ["flat", "flat doubled", "around"],
  state: ["washed", "unwashed"],
  how: ["weighed", "balls"],
  blocking: ["wet", "steamed", "machine-washed", "none"],
  prefers: ["-1", "0", "1"],
  scale: ["-2", "-1", "0", "1", "2"],
} as const;

/** Makes the names of fields. Keys are those of `keysOf` and `newKey`, ids those of the pattern. */
export const fieldOf = {
  swatch: (key: string, part: SwatchPart) => `swatch.${key}.${part}`,
  /** A count as worked. */
  worked: (count: string) => `worked.${count}`,
  /** `yes`: the count is right as typed. */
  workedKept: (count: string) => `worked.${count}.kept`,
  /** A length as worked. */
  length: (length: string) => `length.${length}`,
  /** `yes`: every count and length without a typed number was worked as written. */
  asWritten: "asWritten",
  /** `yes`: a measurement that was changed on purpose. */
  changed: (measurement: string) => `changed.${measurement}`,
  reading: (measurement: string, key: string, part: ReadingPart) => `reading.${measurement}.${key}.${part}`,
  yarn: (key: string, part: YarnPart) => `yarn.${key}.${part}`,
  fit: (area: string, part: FitPart) => `fit.${area}.${part}`,
  hours: "hours",
  /** How the garment was blocked. */
  blocking: "blocking",
} as const;

/** The parts of a field's name. */
export type Field =
  | { readonly kind: "swatch"; readonly key: string; readonly part: SwatchPart }
  | { readonly kind: "worked"; readonly id: string; readonly part: "value" | "kept" }
  | { readonly kind: "length"; readonly id: string }
  | { readonly kind: "changed"; readonly id: string }
  | { readonly kind: "reading"; readonly id: string; readonly key: string; readonly part: ReadingPart }
  | { readonly kind: "yarn"; readonly key: string; readonly part: YarnPart }
  | { readonly kind: "fit"; readonly id: string; readonly part: FitPart }
  | { readonly kind: "asWritten" | "hours" | "blocking" };

const KEY = /^[a-z0-9]{1,20}$/;
const ID = /^[a-z][a-z0-9-]{0,39}$/;

/** @returns the name's parts, null where no field can have that name. */
export function parseField(name: string): Field | null {
  const [kind = "", first = "", second = "", third = "", ...more] = name.split(".");
  if (more.length > 0 || name.endsWith(".")) return null;
  if (kind === "reading") {
    const part = READING_PARTS.find((known) => known === third);
    return part && ID.test(first) && KEY.test(second) ? { kind, id: first, key: second, part } : null;
  }
  if (third !== "") return null;
  if (kind === "swatch" || kind === "yarn") return keyedField(kind, first, second);
  if (kind === "fit") {
    const part = FIT_PARTS.find((known) => known === second);
    return part && ID.test(first) ? { kind, id: first, part } : null;
  }
  if (kind === "worked") return workedField(first, second);
  if (second !== "") return null;
  if (kind === "length" || kind === "changed") return ID.test(first) ? { kind, id: first } : null;
  return name === fieldOf.asWritten || name === fieldOf.hours || name === fieldOf.blocking ? { kind: name } : null;
}

function workedField(id: string, part: string): Field | null {
  if (!ID.test(id) || (part !== "" && part !== "kept")) return null;
  return { kind: "worked", id, part: part === "kept" ? part : "value" };
}

function keyedField(kind: "swatch" | "yarn", key: string, wanted: string): Field | null {
  if (!KEY.test(key)) return null;
  if (kind === "swatch") {
    const part = SWATCH_PARTS.find((known) => known === wanted);
    return part ? { kind, key, part } : null;
  }
  const part = YARN_PARTS.find((known) => known === wanted);
  return part ? { kind, key, part } : null;
}

/** What a report can have several of: its swatches, its yarns, or the readings of one measurement. */
export type Repeated = "swatch" | "yarn" | { readonly reading: string };

/**
 * Keys of the items that fields are named for, oldest first, also where all of an item's fields are blank.
 *
 * @returns in the order of the number that a key begins with, then of the alphabet.
 */
export function keysOf(typed: TypedReport, what: Repeated): string[] {
  const keys = new Set<string>();
  for (const name of Object.keys(typed)) {
    const field = parseField(name);
    if (field === null) continue;
    if (field.kind === "reading") {
      if (typeof what === "object" && field.id === what.reading) keys.add(field.key);
    } else if ((field.kind === "swatch" || field.kind === "yarn") && field.kind === what) keys.add(field.key);
  }
  return [...keys].toSorted(inKeyOrder);
}

/**
 * Key for one more item.
 *
 * @param keys of the items there are.
 * @param mark of this device, a few small letters, so that two devices that add an item at the same time add two items.
 * @returns the next number, then the mark: `3kq`.
 */
export function newKey(keys: readonly string[], mark = ""): string {
  const last = Math.max(0, ...keys.map(numberOf).filter(Number.isFinite));
  return `${last + 1}${mark}`;
}

function inKeyOrder(left: string, right: string): number {
  const numbers = numberOf(left) - numberOf(right);
  if (numbers !== 0 && !Number.isNaN(numbers)) return numbers;
  return left < right ? -1 : 1;
}

function numberOf(key: string): number {
  const digits = /^\d+/.exec(key)?.[0];
  return digits === undefined ? Number.POSITIVE_INFINITY : Number(digits);
}
