import { ownValue } from "../pattern";
import type { DraftPattern } from "./draft-pattern";
import { ORDER } from "./document-path";
import { stepName } from "./step-words";

/** Unit of the numbers of a change: `sign` for lengths whose sign tells whether they add or subtract. */
type ChangeUnit = "stitches" | "rows" | "cm" | "sign" | "none";

/** One difference between two patterns. */
export interface PatternChange {
  /** By ids: `grading.body.m`, `fabrics.lace.gauge.stitches`. */
  readonly path: string;
  readonly what: string;
  /** The size's label; left out if the change is not about one size. */
  readonly size?: string;
  readonly unit: ChangeUnit;
  /** Null if it did not exist before; both null if a text or a list was rewritten. */
  readonly was: number | string | null;
  readonly becomes: number | string | null;
}

type Described = Pick<PatternChange, "what" | "size" | "unit">;

interface Documents {
  readonly before: DraftPattern;
  readonly after: DraftPattern;
}

/** Describes a path of ids with the pattern's labels. */
export function describePath(documents: Documents, path: readonly string[]): Described {
  const [list = "", id = "", ...rest] = path;
  const label = labelOf(documents, list, id);
  switch (list) {
    case "grading": {
      const direction = find(documents, "counts", id)?.["direction"];
      const unit = direction === "rows" ? "rows" : "stitches";
      return { what: labelOf(documents, "counts", id), ...sizeAt(documents, rest[0]), unit };
    }
    case "allowances":
    case "lengths":
      if (rest[0] === "cm")
        return { what: label, ...sizeAt(documents, rest[1]), unit: list === "lengths" ? "cm" : "sign" };
      break;
    case "garment":
      return garmentPath(documents, path);
    case "measurements":
      return measurementPath(documents, label, rest);
    case "sizes":
      if (rest[0] === "body" && rest[1] !== undefined)
        return { what: labelOf(documents, "bodyMeasurements", rest[1]), size: label, unit: "cm" };
      break;
  }
  return { what: plainWords(list, id === "" ? "" : label, rest), unit: "none" };
}

function garmentPath({ before, after }: Documents, [, list = "", id = "", ...rest]: readonly string[]): Described {
  if (list === "steps" && id !== ORDER && id !== "")
    return { what: stepName(after, id) ?? stepName(before, id) ?? id, unit: "none" };
  const named = [...after.garment.pieces, ...before.garment.pieces].find((piece) => piece.id === id);
  return { what: plainWords(list, id === ORDER ? id : (named?.label ?? id), rest), unit: "none" };
}

function measurementPath(documents: Documents, label: string, rest: readonly string[]): Described {
  const [key, inner, size] = rest;
  if (key === "target" && inner === "easeCm")
    return { what: `Ease of ${label}`, ...sizeAt(documents, size), unit: "sign" };
  if (key === "target" && inner === "cm") return { what: `Target of ${label}`, ...sizeAt(documents, size), unit: "cm" };
  if (key === "toleranceCm") return { what: `Tolerance of ${label}`, unit: "cm" };
  if (key === "terms") return { what: `How ${label} is worked out`, unit: "none" };
  return { what: plainWords("measurements", label, rest), unit: "none" };
}

const NOUNS: Readonly<Record<string, string>> = {
  name: "Name",
  craft: "Craft",
  bodyMeasurements: "Body measurement",
  fabrics: "Fabric",
  sizes: "Size",
  sizeBy: "Body measurement that orders the sizes",
  counts: "Count",
  ties: "What must add up",
  lengths: "Length",
  allowances: "Allowance",
  garment: "Garment",
  pieces: "Piece",
  steps: "How it is worked",
  seams: "Seams",
  measurements: "Measurement",
  yarns: "Yarn",
  instructions: "Written instructions",
};

const KEYS: Readonly<Record<string, string>> = {
  overCm: "width of the gauge in cm",
  toolMm: "tool size in mm",
  settles: "settling",
  wornStretch: "worn stretch",
  measured: "when it is measured",
  growth: "growth by blocking",
  mayShrink: "may shrink",
  metresPerBall: "metres in a ball",
  gramsPerBall: "grams in a ball",
  repeat: "multiple",
  how: "how to measure",
};

function plainWords(list: string, label: string, rest: readonly string[]): string {
  const noun = ownValue(NOUNS, list) ?? list;
  if (label === ORDER) return `${noun}: order`;
  const keys = rest.map((key) => ownValue(KEYS, key) ?? key).join(", ");
  return `${noun}${label === "" ? "" : ` “${label}”`}${keys === "" ? "" : `: ${keys}`}`;
}

function sizeAt(documents: Documents, size: string | undefined): { readonly size?: string } {
  return size === undefined ? {} : { size: labelOf(documents, "sizes", size) };
}

function labelOf(documents: Documents, list: string, id: string): string {
  const label = find(documents, list, id)?.["label"];
  return typeof label === "string" ? label : id;
}

function find({ before, after }: Documents, list: string, id: string): Readonly<Record<string, unknown>> | undefined {
  return itemOf(after, list, id) ?? itemOf(before, list, id);
}

function itemOf(pattern: DraftPattern, list: string, id: string): Readonly<Record<string, unknown>> | undefined {
  const items: Readonly<Record<string, unknown>> = { ...pattern };
  const found = ownValue(items, list);
  if (!Array.isArray(found)) return undefined;
  return found.find((item: { readonly id?: unknown }) => item.id === id);
}
