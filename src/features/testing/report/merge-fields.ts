import { fieldOf, parseField, type FieldMessage, type TypedReport } from "@/engine/reporting";
import { ownValue } from "@/engine/pattern";

/** A field that was changed on one of a tester's devices. */
export interface FieldChange {
  readonly field: string;
  /** The field's text as that device last knew it; "" for none. */
  readonly was: string;
  /** Null removes the field, for example of a removed swatch. */
  readonly becomes: string | null;
}

/** A field that another device has changed in the meantime: it stays as it is until the tester has chosen. */
export interface Clash {
  readonly field: string;
  /** The stored text. */
  readonly there: string;
  readonly here: string | null;
}

export interface MergedFields {
  readonly typed: TypedReport;
  readonly clashes: readonly Clash[];
  /** Changes that no report can hold, and why. */
  readonly refused: readonly FieldMessage[];
}

/** The longest text of a field. */
const MAX_CHARACTERS = 2_000;
/** More than the largest pattern has, each measured several times over. */
const MAX_FIELDS = 4_000;

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
      const confirmation = there === becomes ? null : confirmationOf(field);
      if (confirmation !== null && !changed.has(confirmation)) typed.delete(confirmation);
    }
  }
  return { typed: Object.fromEntries(typed), clashes, refused };
}

const TOO_MANY = "A report can hold at most 4,000 fields. Remove something that you do not need.";

function isNewBeyond(typed: ReadonlyMap<string, string>, field: string): boolean {
  return typed.size >= MAX_FIELDS && !typed.has(field);
}

function faultOf(field: string, text: string | null): string | undefined {
  if (parseField(field) === null) return "The report has no field of this name. Reload the page.";
  if (text === null) return undefined;
  if (text.length > MAX_CHARACTERS)
    return `A text has at most 2,000 characters; this one has ${text.length.toLocaleString("en")}.`;
  if (text.isWellFormed() && !text.includes("\u0000")) return undefined;
  return "This contains a character that cannot be stored. Type it again instead of pasting it.";
}

/** The field with the tester's confirmation of an item: it is removed when the number it was given for changes. */
function confirmationOf(name: string): string | null {
  const field = parseField(name);
  if (field === null || !("part" in field) || field.part === "kept") return null;
  switch (field.kind) {
    case "swatch":
      return fieldOf.swatch(field.key, "kept");
    case "worked":
      return fieldOf.workedKept(field.id);
    case "reading":
      return fieldOf.reading(field.id, field.key, "kept");
    case "yarn":
      return fieldOf.yarn(field.key, "kept");
    case "fit":
      return null;
  }
}
