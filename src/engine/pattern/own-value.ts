/**
 * A record's own value, for ids are people's words and may be `constructor`.
 *
 * @returns the value under `id`, undefined where the record is missing or has no such key of its own.
 */
export function ownValue<Value>(record: Readonly<Record<string, Value>> | undefined, id: string): Value | undefined {
  return record !== undefined && Object.hasOwn(record, id) ? record[id] : undefined;
}
