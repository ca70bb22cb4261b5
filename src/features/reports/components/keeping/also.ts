/** Name of a button that changes fields when it is pressed, beside what stands in the form. */
export const ALSO = "also";

/** Its value. @param changes field → text; null takes the field away. */
export function alsoValue(changes: Readonly<Record<string, string | null>>): string {
  return JSON.stringify(changes);
}

/** What a pressed button changes; nothing where it is another one. */
export function readAlso(button: HTMLElement | null): [string, string | null][] {
  if (!(button instanceof HTMLButtonElement) || button.name !== ALSO) return [];
  return parseAlso(button.value);
}

export function parseAlso(value: string): [string, string | null][] {
  const parsed: unknown = JSON.parse(value);
  if (typeof parsed !== "object" || parsed === null) return [];
  return Object.entries(parsed).filter(
    (entry): entry is [string, string | null] => typeof entry[1] === "string" || entry[1] === null,
  );
}
