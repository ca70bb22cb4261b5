import { formatPath, ownValue, type PathPart, type PatternDocument } from "../pattern";

/** The path of the order of a list ends in this: no id has a bracket. */
export const ORDER = "(order)";

/** An item of a list that is matched by id. */
export interface IdItem {
  readonly id: string;
}

export function isIdList(value: unknown): value is readonly IdItem[] {
  return Array.isArray(value) && value.every((item) => isRecord(item) && typeof item["id"] === "string");
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * Puts a value at a path of a pattern.
 *
 * @param into the pattern, or a part of it.
 * @param path by ids: `["allowances", "hem", "cm", "m"]`; items of lists on the way must be there.
 * @param value undefined removes what is there.
 */
export function withValueAt(into: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (isIdList(into)) return into.map((item) => (item.id === key ? withValueAt(item, rest, value) : item));
  const record = isRecord(into) ? into : {};
  const becomes = withValueAt(ownValue(record, key), rest, value);
  if (becomes !== undefined) return { ...record, [key]: becomes };
  return Object.fromEntries(Object.entries(record).filter(([name]) => name !== key));
}

/** The same path as in faults, where items of lists have their index: `allowances[0].cm.m`. */
export function pathByIndex(pattern: PatternDocument, path: string): string {
  const parts: PathPart[] = [];
  let part: unknown = pattern;
  for (const key of path.split(".")) {
    const items: readonly IdItem[] | null = isIdList(part) ? part : null;
    parts.push(items === null ? key : items.findIndex(({ id }) => id === key));
    part = items === null ? (isRecord(part) ? ownValue(part, key) : undefined) : items.find(({ id }) => id === key);
  }
  return formatPath(parts);
}
