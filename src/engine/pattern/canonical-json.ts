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

function isPlainObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function sortedByKey(record: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(record).toSorted(([left], [right]) => (left < right ? -1 : 1)));
}
