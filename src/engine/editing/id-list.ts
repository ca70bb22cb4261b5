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
