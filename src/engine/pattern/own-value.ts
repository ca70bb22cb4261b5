/**
 * A record's own property, because ids are chosen by people and may be `constructor`.
 *
 * @returns the value under `id`, undefined if the record is missing or has no such own property.
 */
export function ownValue<Value>(record: Readonly<Record<string, Value>> | undefined, id: string): Value | undefined {
  return record !== undefined && Object.hasOwn(record, id) ? record[id] : undefined;
}
