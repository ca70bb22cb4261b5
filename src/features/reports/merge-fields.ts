import { fieldOf, parseField, type FieldMessage, type TypedReport } from "@/engine/reporting";
import { ownValue } from "@/engine/pattern";

/** A field that was changed on one of her devices. */
export interface FieldChange {
  readonly field: string;
  /** The text that stood there as that device last knew it, "" where nothing did. */
  readonly was: string;
  /** Null takes the field away, as of a swatch that is taken out. */
  readonly becomes: string | null;
}

/** A field that another device has changed meanwhile: it is left as it is until she has chosen. */
export interface Clash {
  readonly field: string;
  /** The text that stands there. */
  readonly there: string;
  readonly here: string | null;
}

export interface MergedFields {
  readonly typed: TypedReport;
  readonly clashes: readonly Clash[];
  /** Changes that no report can take in, and why. */
  readonly refused: readonly FieldMessage[];
}

/** The longest text of a field. */
export const MOST_CHARACTERS = 2_000;
/** More than the largest pattern has, each measured several times over. */
const MOST_FIELDS = 4_000;

/** Puts changes into what is stored, field by field. The same changes once more change nothing. */
export function mergeFields(stored: TypedReport, changes: readonly FieldChange[]): MergedFields {
  const typed = new Map(Object.entries(stored));
  const clashes: Clash[] = [];
  const refused: FieldMessage[] = [];
  const changed = new Set(changes.map(({ field }) => field));
  for (const { field, was, becomes } of changes) {
    const there = ownValue(stored, field) ?? "";
    const fault = faultOf(field, becomes) ?? (isNewBeyond(typed, field) ? TOO_MANY : undefined);
    if (fault !== undefined) refused.push({ field, message: fault });
    else if (there !== was && there !== (becomes ?? "")) clashes.push({ field, there, here: becomes });
    else {
      if (becomes === null) typed.delete(field);
      else typed.set(field, becomes);
      const word = there === becomes ? null : wordOn(field);
      if (word !== null && !changed.has(word)) typed.delete(word);
    }
  }
  return { typed: Object.fromEntries(typed), clashes, refused };
}

const TOO_MANY = "This is more than a report can hold. Take something out that you do not need.";

function isNewBeyond(typed: ReadonlyMap<string, string>, field: string): boolean {
  return typed.size >= MOST_FIELDS && !typed.has(field);
}

function faultOf(field: string, text: string | null): string | undefined {
  if (parseField(field) === null) return "The report has no such field.";
  if (text === null) return undefined;
  if (text.length > MOST_CHARACTERS) return "This is longer than 2,000 characters. Write it shorter.";
  if (text.isWellFormed() && !text.includes("\u0000")) return undefined;
  return "This holds a character that cannot be stored. Write it once more.";
}

/** The field that holds her word that an item is right as it stands: it falls with the number that it was given for. */
function wordOn(name: string): string | null {
  const field = parseField(name);
  if (field === null || !("part" in field) || field.part === "kept") return null;
  switch (field.kind) {
    case "swatch":
      return fieldOf.swatch(field.key, "kept");
    case "reading":
      return fieldOf.reading(field.id, field.key, "kept");
    case "yarn":
      return fieldOf.yarn(field.key, "kept");
    case "fit":
      return null;
  }
}
