import type { Fault } from "./faults";

/**
 * One text for one value: keys in code-unit order, no spaces, so that equal documents have equal bytes.
 *
 * @param value JSON value; undefined members are left out.
 * @returns canonical JSON.
 * @see RFC 8785 (JSON Canonicalization Scheme), whose number and string forms are those of JSON.stringify.
 */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, member: unknown) => (isPlainObject(member) ? sortedByKey(member) : member));
}

/**
 * Whether two values have the same canonical JSON, found without writing it.
 *
 * @param left @param right JSON values; undefined members count as left out.
 */
export function isSameJson(left: unknown, right: unknown): boolean {
  if (left === right) return true;
  if (Array.isArray(left) && Array.isArray(right))
    return left.length === right.length && left.every((item, index) => isSameJson(item, right[index]));
  if (!isPlainObject(left) || !isPlainObject(right)) return false;
  let members = 0;
  for (const key in left) {
    if (left[key] === undefined) continue;
    if (!Object.hasOwn(right, key) || !isSameJson(left[key], right[key])) return false;
    members += 1;
  }
  for (const key in right) if (right[key] !== undefined) members -= 1;
  return members === 0;
}

function isPlainObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function sortedByKey(record: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(record).toSorted(([left], [right]) => (left < right ? -1 : 1)));
}

/**
 * Value of a JSON text.
 *
 * @param text JSON, with or without a byte order mark.
 * @returns the value, or one fault of the whole that says the text is not JSON.
 */
export function readJson(text: string): { ok: true; value: unknown } | { ok: false; faults: readonly Fault[] } {
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ""));
    return { ok: true, value };
  } catch (error) {
    if (!(error instanceof SyntaxError || error instanceof RangeError)) throw error;
    return { ok: false, faults: [{ path: "$", says: `is not JSON: ${error.message}` }] };
  }
}
