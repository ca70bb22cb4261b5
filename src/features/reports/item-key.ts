import { fieldOf, newKey, parseField } from "@/engine/reporting";

const MARKS = 36 ** 3;

/** Key of one more item. Each page makes another, so that two devices that add one make two. */
export function furtherKey(keys: readonly string[]): string {
  return newKey(keys, Math.floor(Math.random() * MARKS).toString(36));
}

/** The key of an item that an address adds, undefined where it names none. */
export function itemKey(value: string | string[] | undefined): string | undefined {
  return typeof value === "string" && parseField(fieldOf.swatch(value, "stitches")) !== null ? value : undefined;
}
