import { localStore } from "@/ui/browser-store";

/** A field that was typed and may not be saved yet. */
export interface Pending {
  /** The field's text as this device last knew it. */
  readonly was: string;
  /** Null removes the field. */
  readonly becomes: string | null;
}

/** Fields that the browser refused to store: they live as long as the page is open. */
const unstored = new Map<string, Pending>();

/** Each field has a storage key of its own, so that two tabs do not overwrite each other. */
function storageKeyOf(testerId: string, field = ""): string {
  return `sizewright report ${testerId} ${field}`;
}

/** All of a tester's fields that are not saved yet, also from other pages or from before a reload. */
export function pendingFields(testerId: string): Map<string, Pending> {
  const start = storageKeyOf(testerId);
  const found = new Map<string, Pending>();
  for (const key of localStore.keys()) {
    const pending = key.startsWith(start) ? toPending(localStore.read(key)) : null;
    if (pending !== null) found.set(key.slice(start.length), pending);
  }
  for (const [key, pending] of unstored) if (key.startsWith(start)) found.set(key.slice(start.length), pending);
  return found;
}

/** @param pending null once it is saved. @returns false if it would be lost with the page. */
export function storePending(testerId: string, field: string, pending: Pending | null): boolean {
  const key = storageKeyOf(testerId, field);
  unstored.delete(key);
  const isStored = localStore.write(key, pending === null ? undefined : [pending.was, pending.becomes]);
  if (!isStored && pending !== null) unstored.set(key, pending);
  return isStored;
}

function toPending(stored: unknown): Pending | null {
  if (!Array.isArray(stored)) return null;
  const [was, becomes]: unknown[] = stored;
  if (typeof was !== "string" || (typeof becomes !== "string" && becomes !== null)) return null;
  return { was, becomes };
}
