/** A field that was typed and is not known to be kept yet. */
export interface Pending {
  /** What stood there as this device last knew it. */
  readonly was: string;
  /** Null takes the field away. */
  readonly becomes: string | null;
}

/** Fields whose browser refuses to store: they live as long as the page is open. */
const unstored = new Map<string, Pending>();

/** Each field has a place of its own, so that two tabs do not overwrite each other. */
function placeOf(testerId: string, field = ""): string {
  return `sizewright report ${testerId} ${field}`;
}

/** All that is not kept yet of a tester, also what was typed on another of her pages, or before a reload. */
export function pendingFields(testerId: string): Map<string, Pending> {
  const start = placeOf(testerId);
  const found = new Map<string, Pending>();
  try {
    for (const place of Object.keys(localStorage)) {
      const pending = place.startsWith(start) ? read(localStorage.getItem(place)) : null;
      if (pending !== null) found.set(place.slice(start.length), pending);
    }
  } catch {
    // Storing is refused: what there is stands in memory.
  }
  for (const [place, pending] of unstored) if (place.startsWith(start)) found.set(place.slice(start.length), pending);
  return found;
}

/** @param pending null once it is kept. @returns false where it would not outlive the page. */
export function storePending(testerId: string, field: string, pending: Pending | null): boolean {
  const place = placeOf(testerId, field);
  unstored.delete(place);
  try {
    if (pending === null) localStorage.removeItem(place);
    else localStorage.setItem(place, JSON.stringify([pending.was, pending.becomes]));
    return true;
  } catch {
    if (pending !== null) unstored.set(place, pending);
    return false;
  }
}

function read(text: string | null): Pending | null {
  try {
    const parsed: unknown = JSON.parse(text ?? "null");
    if (!Array.isArray(parsed)) return null;
    const [was, becomes]: unknown[] = parsed;
    if (typeof was !== "string" || (typeof becomes !== "string" && becomes !== null)) return null;
    return { was, becomes };
  } catch {
    return null;
  }
}
