/** Name of a button that also changes fields when it is pressed. */
export const ALSO = "also";

/** Its value. @param changes field → text; null removes the field. */
export function alsoValue(changes: Readonly<Record<string, string | null>>): string {
  return JSON.stringify(changes);
}

/** The changes of the pressed button; none if it is another kind of button. */
export function readAlso(button: HTMLElement | null): [string, string | null][] {
  if (!(button instanceof HTMLButtonElement) || button.name !== ALSO) return [];
  return parseAlso(button.value);
}

function parseAlso(value: string): [string, string | null][] {
  const parsed: unknown = JSON.parse(value);
  if (typeof parsed !== "object" || parsed === null) return [];
  return Object.entries(parsed).filter(
    (entry): entry is [string, string | null] => typeof entry[1] === "string" || entry[1] === null,
  );
}
