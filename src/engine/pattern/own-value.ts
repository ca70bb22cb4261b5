import type { CmBySize } from "./pattern-document";

/**
 * A record's own property, because ids are chosen by people and may be `constructor`.
 *
 * @returns the value under `id`, undefined if the record is missing or has no such own property.
 */
export function ownValue<Value>(record: Readonly<Record<string, Value>> | undefined, id: string): Value | undefined {
  return record !== undefined && Object.hasOwn(record, id) ? record[id] : undefined;
}

/**
 * Value of a size where a number stands for all sizes or a record names each.
 *
 * @param value cm, for all sizes or by size id.
 * @param size id of a size that the record names.
 * @returns cm.
 * @throws {RangeError} where the record does not name the size, which a parsed document rules out.
 */
export function cmOfSize(value: CmBySize, size: string): number {
  if (typeof value === "number") return value;
  const cm = ownValue(value, size);
  if (cm === undefined) throw new RangeError(`no value for size ${size}`);
  return cm;
}
