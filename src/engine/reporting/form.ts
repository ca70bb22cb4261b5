// Leaves of other packages, not their faces: reading a report needs no schema library, and a tester's page loads none.
import { ownValue } from "../pattern/own-value";
import { CHOICES, type TypedReport } from "./fields";
import type { FieldMessage, ReportContext } from "./report-context";

/** A form that is being read; faults and remarks are added to its lists. */
export interface Form {
  readonly typed: TypedReport;
  readonly context: ReportContext;
  readonly faults: FieldMessage[];
  readonly remarks: FieldMessage[];
  /** Texts to store with the report, by path in it. */
  readonly storedTexts: Record<string, string>;
}

/** The content of a field. `kept` is the text if the document would write the value differently. */
export type Entry<Value> =
  | { readonly status: "blank" | "faulty" }
  | { readonly status: "read"; readonly value: Value; readonly text: string; readonly kept: string | null };

export type ReadText<Value> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly message: string };

/** Longer than any number with its unit. */
const MAX_CHARACTERS = 200;

export function newForm(typed: TypedReport, context: ReportContext): Form {
  return { typed, context, faults: [], remarks: [], storedTexts: {} };
}

/** The field's text without spaces around it, "" where nothing is typed. */
export function textAt({ typed }: Form, field: string): string {
  return (ownValue(typed, field) ?? "").trim();
}

export function isBlank(form: Form, fields: readonly string[]): boolean {
  return fields.every((field) => textAt(form, field) === "");
}

/**
 * Reads the items of a list that are typed at all.
 *
 * @param keys of the items, in their order.
 * @param measuredFields the fields without any of which an item is ignored.
 * @param read reads the item that becomes the list's next, undefined where it has a fault.
 */
export function readItems<Item>(
  form: Form,
  keys: readonly string[],
  {
    measuredFields,
    read,
  }: {
    readonly measuredFields: (key: string) => readonly string[];
    readonly read: (key: string, index: number) => Item | undefined;
  },
): { readonly items: Item[]; readonly keys: string[] } {
  const items: Item[] = [];
  const usedKeys: string[] = [];
  for (const key of keys) {
    if (isBlank(form, measuredFields(key))) continue;
    const item = read(key, items.length);
    if (item === undefined) continue;
    items.push(item);
    usedKeys.push(key);
  }
  return { items, keys: usedKeys };
}

/** Reads a field's text; one that cannot be read is a fault at the field. */
export function entryAt<Value extends string | number>(
  form: Form,
  field: string,
  read: (text: string) => ReadText<Value>,
): Entry<Value> {
  const text = textAt(form, field);
  if (text === "") return { status: "blank" };
  const result = storableFault(text, MAX_CHARACTERS) ?? read(text);
  if (result.ok)
    return { status: "read", value: result.value, text, kept: text === String(result.value) ? null : text };
  form.faults.push({ field, message: result.message });
  return { status: "faulty" };
}

/** @returns why a text cannot be stored, undefined where it can. */
export function storableFault(text: string, max: number): { readonly ok: false; readonly message: string } | undefined {
  if (text.length > max) return { ok: false, message: `This is longer than ${max} characters. Please shorten it.` };
  if (text.isWellFormed() && !text.includes("\u0000")) return undefined;
  return { ok: false, message: "This contains a character that cannot be stored. Please type it again." };
}

/** One of the field's options. */
export function choiceAt<Choice extends string>(form: Form, field: string, choices: readonly Choice[]): Entry<Choice> {
  return entryAt(form, field, (text) => {
    const value = choices.find((choice) => choice === text);
    return value === undefined
      ? { ok: false, message: `Choose one of ${choices.map((choice) => `“${choice}”`).join(", ")}.` }
      : { ok: true, value };
  });
}

/** `yes` or `no`; undefined where nothing is chosen or the choice cannot be read. */
export function yesAt(form: Form, field: string): boolean | undefined {
  const entry = choiceAt(form, field, CHOICES.yesNo);
  return entry.status === "read" ? entry.value === "yes" : undefined;
}

/** A value that an item requires; if it is missing, a fault is added at its field. */
export function requiredEntry<Value>(
  form: Form,
  field: string,
  { entry, missing }: { entry: Entry<Value>; missing: string },
) {
  if (entry.status === "read") return entry;
  if (entry.status === "blank") form.faults.push({ field, message: missing });
  return undefined;
}

/** An item of the pattern by its id; if nothing is chosen and there is only one, that one. */
export function itemAt<Item extends { readonly id: string }>(
  form: Form,
  field: string,
  { items, missing }: { readonly items: readonly Item[]; readonly missing: string },
): Item | undefined {
  const [first, ...others] = items;
  if (textAt(form, field) === "" && first !== undefined && others.length === 0) return first;
  const ids = items.map(({ id }) => id);
  const entry = entryAt(form, field, (text) =>
    ids.includes(text) ? { ok: true, value: text } : { ok: false, message: "The pattern has no item of this name." },
  );
  const chosen = requiredEntry(form, field, { entry, missing });
  return chosen && items.find(({ id }) => id === chosen.value);
}

/** Stores a text with the report. */
export function storeText(form: Form, path: string, text: string | null): void {
  if (text !== null && text !== "") form.storedTexts[path] = text;
}
