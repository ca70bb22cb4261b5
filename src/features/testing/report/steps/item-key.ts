import { fieldOf, newKey, parseField } from "@/engine/reporting";

const KEY_RANGE = 36 ** 3;

/** Key of a further item. It is random, so that two devices that each add an item add two. */
export function furtherKey(keys: readonly string[]): string {
  return newKey(keys, Math.floor(Math.random() * KEY_RANGE).toString(36));
}

/** The key of an item that an address adds; undefined if it names none. */
export function itemKey(value: string | string[] | undefined): string | undefined {
  return typeof value === "string" && parseField(fieldOf.swatch(value, "stitches")) !== null ? value : undefined;
}
