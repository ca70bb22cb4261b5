import { useSyncExternalStore } from "react";
import { localStore } from "@/ui/browser-store";

const listeners = new Set<() => void>();
/** Where storage is refused, the mark lasts while the page is open. */
const held = new Map<string, string>();

/**
 * Where a tester is in the text: a mark in this browser, which is found again without a connection, too.
 *
 * @param keys of the passages, each its number and the hash of its words. A passage that has moved is found by its words.
 * @returns the key of the marked passage, null if none is marked; and a function to mark one.
 */
export function useOwnPlace(
  testerId: string,
  keys: readonly string[],
): readonly [string | null, (key: string | null) => void] {
  const name = `sizewright-own-place-${testerId}`;
  const stored = useSyncExternalStore(
    subscribe,
    () => read(name),
    () => "",
  );
  const own =
    keys.find((key) => key === stored) ?? keys.find((key) => stored !== "" && wordsOf(key) === wordsOf(stored));
  return [own ?? null, (key) => write(name, key ?? "")];
}

function wordsOf(key: string): string {
  return key.slice(key.indexOf("-") + 1);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function read(name: string): string {
  const inMemory = held.get(name);
  if (inMemory !== undefined) return inMemory;
  const stored = localStore.read(name);
  const key = typeof stored === "string" ? stored : "";
  held.set(name, key);
  return key;
}

function write(name: string, key: string): void {
  held.set(name, key);
  localStore.write(name, key === "" ? undefined : key);
  for (const listener of listeners) listener();
}
